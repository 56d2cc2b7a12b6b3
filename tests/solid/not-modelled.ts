/** Card that rigid plates cannot stand for, and is left out: which panels, and why. */
interface LeftOut {
  readonly why: string;
  /** Panels that go through others or bend: nothing is asked of them. */
  readonly panels?: RegExp;
  /** Both panels of a pair that is not asked about. */
  readonly among?: RegExp;
  /** Panels that lie on one another: only pairs of one stack are asked about. */
  readonly stacks?: readonly RegExp[];
  /** Panels whose card within a fold between two of them is not asked about, since it is pressed over layers; of what nests it is. */
  readonly folds?: RegExp;
}

const GUSSETS: LeftOut = {
  why: 'up to seven layers pressed together under the ridge: walls and bottom only',
  among: /^tab$|Roof|roof|Gusset|Fold|Handle|Fin/,
};

export const NOT_MODELLED: Readonly<Record<string, LeftOut>> = {
  'pillow-pack': { why: 'its faces and ends are curved: not modelled', panels: /./ },
  'snap-lock': { why: 'the tongue goes through the notch of another flap', panels: /^tongue$/ },
  house: { why: 'gable tabs may touch the front roof under a steep ridge: roofs left out', among: /[rR]oof/ },
  'twist-pouch': {
    why: 'its tabs are pressed between two walls at acute folds: walls only',
    panels: /^(tab|bottomTab|topTab)$/,
  },
  'folded-square': {
    why: 'pressed corners, rims and points not modelled: layers of each wall, and the lid over the box',
    folds: /./,
    among: /Point$/,
    stacks: [/^base$|Point$/, /^right(Inner)?$/, /^left(Inner)?$/, /front/i, /back/i],
  },
  'petal-top': {
    why: 'each petal steps down and up by one layer of card; the card within those two bends not modelled',
    folds: /^petal/,
  },
  'gable-top': GUSSETS,
  'fin-top': GUSSETS,
};

export const isLeftOut = (style: string, one: string, other: string): boolean => {
  const { panels, among, stacks } = NOT_MODELLED[style] ?? {};
  const stackOf = (panel: string) => stacks?.findIndex((stack) => stack.test(panel));
  const pressed = (panels?.test(one) ?? false) || (panels?.test(other) ?? false);
  const together = (among?.test(one) ?? false) && (among?.test(other) ?? false);
  return pressed || together || stackOf(one) !== stackOf(other);
};
