import { toDegrees, toRadians } from '../../units/angles';
import { defineStyle } from '../language/define';
import type { Angle, ClosingStep, CreaseSpec, Len, PanelSpec, PieceSpec } from '../language/types';
import { wornUpsideDown } from '../shapes/sides';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** Steps on a grid whose unit is a wall's height, turned by 45 degrees on the paper. */
type Step = readonly [across: number, up: number];

/** The four walls, as they go round the base: the way out over each, and the way its score runs. `keeps`: its point is folded in first. */
const SIDES = [
  { name: 'right', out: [1, 0], along: [0, 1], edge: 'e1', keeps: true },
  { name: 'back', out: [0, 1], along: [-1, 0], edge: 'e2', keeps: false },
  { name: 'left', out: [-1, 0], along: [0, -1], edge: 'e3', keeps: true },
  { name: 'front', out: [0, -1], along: [1, 0], edge: 'e0', keeps: false },
] as const satisfies readonly {
  readonly name: string;
  readonly out: Step;
  readonly along: Step;
  readonly edge: string;
  readonly keeps: boolean;
}[];
type SideOf = (typeof SIDES)[number];

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);
const sum = (...steps: readonly (readonly [times: number, step: Step])[]): Step => [
  steps.reduce((all, [times, [x]]) => all + times * x, 0),
  steps.reduce((all, [times, [, y]]) => all + times * y, 0),
];

/** How far apart two stages of raising the last walls lie, degrees; between them every corner keeps closed. */
const STOPS = [15, 30, 45, 60, 75] as const;

/**
 * Folds of a corner while the wall that wraps it rises: its half triangle on that wall, and the one on the wall that stands. The corner's point
 * keeps its distance from both scores, so sin β = tan(45° − φ/2) and sin ρ = −cos β. Derived; the test holds it to the creases.
 */
function cornerAt(riseDeg: number): { readonly wrapped: number; readonly standing: number } {
  const sine = Math.tan(toRadians(45 - riseDeg / 2));
  return { wrapped: 180 - toDegrees(Math.asin(sine)), standing: toDegrees(Math.acos(sine)) };
}

/** One square of paper as half of the box; `eighth` is an eighth of its side, and every crease runs from one multiple of it to another. */
function foldedFrom(label: string, eighth: string): PieceSpec {
  const times = (count: number): Len => `${count} ${eighth}`;
  /** A step on the turned grid as it lies on the paper. */
  const lies = ([x, y]: Step): readonly [Len, Len] => [times(x - y), times(x + y)];
  const corner = (x: number, y: number): readonly [Len, Len] => [times(x - y + 4), times(x + y + 4)];
  const panels: Record<string, PanelSpec> = {
    base: { role: 'base', outline: [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)] },
  };
  const hang: Hang = (name, role, on, fold, ...corners) => {
    panels[name] = { role, on, fold, outline: corners.map(lies), asLies: true };
  };
  for (const { name, out, along, edge } of SIDES) {
    hang(name, 'wall', `base.${edge}`, 90, out, sum([1, out], [2, along]));
    hang(`${name}Inner`, 'liner', `${name}.e2`, 180, out, sum([1, out], [2, along]));
    hang(`${name}Point`, 'liner', `${name}Inner.e2`, -90, sum([1, out], [1, along]));
  }
  const creases = SIDES.flatMap((before, at) =>
    foldCorner(before, SIDES[(at + 1) % SIDES.length] as SideOf, hang),
  );
  return {
    label,
    panels,
    creases,
    joints: [],
    seams: [
      ['right.e3', 'back.e1'],
      ['back.e3', 'left.e1'],
      ['left.e3', 'front.e1'],
      ['front.e3', 'right.e1'],
    ],
    overlaps: [
      ['rightInner', 'right'],
      ['leftInner', 'left'],
      ...SIDES.map(({ name }) => [`${name}Point`, 'base']),
      ...PLEATS.map(({ wall, standing, standingInner, wrapped, wrappedInner }) => [
        `${wall}Inner`,
        wrappedInner,
        standingInner,
        standing,
        wrapped,
        wall,
      ]),
    ],
    closing: CLOSING,
    shell: ['base', ...SIDES.map(({ name }) => name)],
    roomMm3: (values) => 8 * Math.SQRT2 * (values[eighth] ?? 0) ** 3,
    roomFormula: `8 * sqrt(2) * ${eighth} ** 3`,
  };
}

type Hang = (
  name: string,
  role: PanelSpec['role'],
  on: `${string}.e${number}`,
  fold: Angle,
  ...corners: readonly Step[]
) => void;

/** Hangs the four triangles of the corner between two walls; gives the creases that join them. */
function foldCorner(before: SideOf, after: SideOf, hang: Hang): readonly CreaseSpec[] {
  const [keeps, wraps] = before.keeps ? [before, after] : [after, before];
  const ends = keeps === before;
  const pleat = names(keeps, wraps);
  // on the wall that stands: at its end, or at its start where the wrapped wall comes before it
  hang(
    pleat.standing,
    'gusset',
    `${keeps.name}.${ends ? 'e3' : 'e1'}`,
    90,
    ends ? keeps.along : sum([1, keeps.out], [-1, keeps.along]),
  );
  hang(
    pleat.standingInner,
    'gusset',
    `${pleat.standing}.${ends ? 'e1' : 'e2'}`,
    180,
    ends ? keeps.out : sum([1, keeps.out], [1, keeps.along]),
  );
  hang(
    pleat.wrapped,
    'gusset',
    `${wraps.name}.${ends ? 'e1' : 'e3'}`,
    180,
    ends ? sum([1, wraps.out], [-1, wraps.along]) : wraps.along,
  );
  hang(
    pleat.wrappedInner,
    'gusset',
    `${wraps.name}Inner.${ends ? 'e1' : 'e3'}`,
    180,
    ends ? sum([-1, wraps.along]) : sum([-1, wraps.out], [1, wraps.along]),
  );
  return [
    {
      between: [`${pleat.standing}.${ends ? 'e2' : 'e1'}`, `${pleat.wrapped}.${ends ? 'e1' : 'e2'}`],
      fold: -180,
    },
    {
      between: [`${keeps.name}Inner.${ends ? 'e3' : 'e1'}`, `${pleat.standingInner}.${ends ? 'e1' : 'e2'}`],
      fold: -90,
    },
    {
      between: [`${pleat.wrapped}.${ends ? 'e2' : 'e1'}`, `${pleat.wrappedInner}.${ends ? 'e1' : 'e2'}`],
      fold: -180,
    },
  ];
}

/** The four triangles of one corner: two on the wall that stands and its inner layer, two on the one that wraps them. */
function names({ name: keeps }: Pick<SideOf, 'name'>, { name: wraps }: Pick<SideOf, 'name'>) {
  const corner = `${wraps}${capital(keeps)}`;
  return {
    wall: wraps,
    standing: `${keeps}${capital(wraps)}Pleat`,
    standingInner: `${keeps}${capital(wraps)}InnerPleat`,
    wrapped: `${corner}Pleat`,
    wrappedInner: `${corner}InnerPleat`,
  };
}

const PLEATS = SIDES.filter(({ keeps }) => !keeps).flatMap((wraps) =>
  SIDES.filter(({ keeps }) => keeps).map((keeps) => names(keeps, wraps)),
);

const all = (pick: (pleat: (typeof PLEATS)[number]) => string): readonly string[] => PLEATS.map(pick);
const WRAPPED = [...all(({ wrapped }) => wrapped), ...all(({ wrappedInner }) => wrappedInner)];
const STANDING = all(({ standing }) => standing);

const CLOSING: readonly ClosingStep[] = [
  {
    do: 'fold',
    panels: ['rightInner', 'leftInner', ...all(({ standingInner }) => standingInner)],
    tip: 'The two points meet in the middle.',
  },
  { do: 'fold', panels: ['rightPoint', 'leftPoint'] },
  {
    do: 'fold',
    panels: ['right', 'left', ...WRAPPED],
    to: 90,
    tip: 'Both sides rise from end to end, and their points come down on the floor.',
  },
  {
    do: 'fold',
    panels: ['back', 'front', ...STANDING, ...WRAPPED],
    through: STOPS.map((rise) => {
      const { standing, wrapped } = cornerAt(rise);
      return {
        back: rise,
        front: rise,
        ...Object.fromEntries(STANDING.map((panel) => [panel, standing])),
        ...Object.fromEntries(WRAPPED.map((panel) => [panel, wrapped])),
      };
    }),
    tip: 'Push each corner in along its slanted crease, so that it lies flat along the wall.',
  },
  ...(['back', 'front'] as const).map(
    (name): ClosingStep => ({
      do: 'fold',
      panels: [`${name}Inner`, `${name}Point`],
      tip: 'Fold it over the rim and press its point flat on the floor: it holds the corners.',
    }),
  ),
];

/** The lid's layers: six cards at each corner, one over the other walls. */
const FIT_AND_SAVE = {
  ease: 'ease',
  marks: 4,
  truest: 'the sides of both squares',
  saves: 'Press every crease hard, the corners most of all.',
} as const;

/** A box and its lid, each folded from one square; nothing is cut and nothing is glued. Construction: a traditional square-paper box, common practice, no source; creases derived. No code of practice has a family for it (from memory). */
export const foldedSquare = defineStyle({
  id: 'folded-square',
  version: 1,
  name: 'Folded square box',
  source: 'traditional square-paper box, common practice, no source; creases derived',
  goodFor: 'Jewelry, candy in wrappers, small thanks: two squares of paper, no glue and no scissors.',
  watchOut:
    'Six layers meet at each corner, so take text paper or light cardstock. Unfolded, it lies flat again: tie it for the post.',
  symbols: {
    square: sizeOf(
      'Square',
      'Side of the square for the box. The box is a little over a third as wide, and half as high as wide.',
      '6 in',
      '4 in',
      '12 in',
    ),
    ease: allowanceOf(
      'Lid ease',
      'How much wider the lid is than its layers and the box in it.',
      '3/64 in',
      '1/64 in',
      '1/4 in',
    ),
  },
  inside: ['side - 3t', 'side - 11t', 'wall - 3t'],
  // 2 √2 times the twelve layers across front and back; 17/6 is a hair more than 2 √2
  allowances: { larger: '34t + 17/6 ease' },
  lets: { lidSquare: 'square + larger', eighth: 'square/8', lidEighth: 'lidSquare/8' },
  quantities: {
    side: {
      means: 'a side of the box, score to score',
      of: ({ eighth = 0 }) => 2 * Math.SQRT2 * eighth,
      formula: '2 * sqrt(2) * eighth',
    },
    wall: {
      means: 'height of the box, score to rim',
      of: ({ eighth = 0 }) => Math.SQRT2 * eighth,
      formula: 'sqrt(2) * eighth',
    },
    lidSide: {
      means: 'a side of the lid, score to score',
      of: ({ lidEighth = 0 }) => 2 * Math.SQRT2 * lidEighth,
      formula: '2 * sqrt(2) * lidEighth',
    },
    grown: {
      means: 'how much wider the lid is than the box, score to score',
      of: ({ eighth = 0, lidEighth = 0 }) => 2 * Math.SQRT2 * (lidEighth - eighth),
      formula: '2 * sqrt(2) * (lidEighth - eighth)',
    },
  },
  sidesRenamed: ['lid'],
  pieces: {
    box: foldedFrom('Box', 'eighth'),
    lid: wornUpsideDown(foldedFrom('Lid', 'lidEighth')),
  },
  constraints: [
    {
      code: 'card-too-thick-to-fold',
      symbol: 'square',
      atLeast: '300t',
      severity: 'stop',
      says: 'Six layers of paper {t} thick are stiff to fold in a square of {square}.',
      remedy: 'Take a square of at least {limit}, or thinner paper.',
    },
  ],
  promises: [
    { claim: 'covers', piece: 'box', panels: ['base'], area: ['side', 'side'] },
    { claim: 'nests', inner: 'box', outer: 'lid', gap: ['grown', 'grown'] },
  ],
  fits: [
    {
      what: 'lid over the box, front to back',
      room: 'lidSide',
      body: 'side',
      // five layers within the score of each lid wall and half of the next, twice; half a card of the box at each side
      card: '12t',
      ...FIT_AND_SAVE,
    },
    { what: 'lid over the box, left to right', room: 'lidSide', body: 'side', card: '4t', ...FIT_AND_SAVE },
  ],
  traits: ['lid'],
});
