/** Card that rigid plates cannot stand for, and is left out: which panels, and why. */
interface LeftOut {
  readonly why: string;
  /** Panels that go through others or bend: nothing is asked of them. */
  readonly panels?: RegExp;
  /** Both panels of a pair that is not asked about. */
  readonly among?: RegExp;
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
  'gable-top': GUSSETS,
  'fin-top': GUSSETS,
};

export const isLeftOut = (style: string, one: string, other: string): boolean => {
  const { panels, among } = NOT_MODELLED[style] ?? {};
  return Boolean(panels?.test(one) || panels?.test(other) || (among?.test(one) && among.test(other)));
};
