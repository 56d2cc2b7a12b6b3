import type {
  Chosen,
  ConstraintSpec,
  FitSpec,
  Len,
  OptionSpec,
  PanelSpec,
  PieceSpec,
  Pieces,
  Quantity,
  SymbolSpec,
  Values,
} from '../language/types';
import { allowanceOf, sizeOf } from './size-symbols';

/** How sharp a tip is for so many tips, degrees: the five- and six-pointed star of the school book, and eight tips that stand square. */
const TIP_DEG: Readonly<Record<string, number>> = { 5: 36, 6: 60, 8: 90 };
/** Card left straight at the free edge of a flap. source: our choice */
const FLAP_LEFT_MM = 6.35;
/** Clear of every wall, so that a floor drops in untrimmed. source: 1/32 in, common practice, no source */
const PLATE_EASE_MM = 0.79375;

export const STAR_POINTS: OptionSpec = {
  label: 'Tips',
  help: 'How many tips the star has; it has twice as many walls.',
  choices: [5, 6, 8].map((points) => ({ id: String(points), label: String(points) })),
};

export const STAR_SYMBOLS = {
  side: sizeOf('Wall', 'One wall from a tip to a hollow, score to score.', '1 in', '3/4 in', '3 in'),
  height: sizeOf('Height', 'Wall, from the bottom score to the rim.', '1 1/2 in', '3/4 in', '8 in'),
  flap: allowanceOf(
    'Bottom flap',
    'From the bottom score to the flap’s free edge.',
    '3/16 in',
    '1/8 in',
    '1 in',
  ),
  tab: allowanceOf(
    'Glue tab',
    'The strip that joins the last wall to the first.',
    '1/2 in',
    '3/8 in',
    '1 in',
  ),
} as const satisfies Record<string, SymbolSpec>;

/** Room for an item inside the star. */
export const STAR_INSIDE = ['itemSquare - t', 'itemSquare - t', 'height - 5/2 t'] as const;

const pointsOf = (chosen: Chosen): number => Number(chosen['points'] ?? 5);
const tipDeg = (chosen: Chosen): number => TIP_DEG[pointsOf(chosen)] ?? 36;
const halfTip = (chosen: Chosen): number => (tipDeg(chosen) * Math.PI) / 360;
const halfTurn = (chosen: Chosen): number => Math.PI / pointsOf(chosen);
const count = (many: number): readonly number[] => Array.from({ length: many }, (_, at) => at + 1);

/** From the middle of a star to the line of a wall so long. */
const reachOf = (sideMm: number, chosen: Chosen): number =>
  (sideMm * Math.sin(halfTurn(chosen) + halfTip(chosen)) * Math.sin(halfTip(chosen))) /
  Math.sin(halfTurn(chosen));

/** The same for a wall of one, as text: a room knows no options, so their numbers stand in it. */
function shareText(chosen: Chosen): string {
  const [turn, tip] = [180 / pointsOf(chosen), tipDeg(chosen) / 2];
  return `(sin(${turn + tip}) * sin(${tip}) / sin(${turn}))`;
}

/** What a ring of star walls is made of: what its panels are called, and their lengths. */
interface StarRing {
  readonly label: string;
  readonly lid?: true;
  readonly wall: string;
  readonly tab: string;
  readonly flap: string;
  readonly side: Len;
  readonly height: Len;
  /** What is said when its flaps are folded in. */
  readonly tip: string;
}

/** Walls in and out by turns, and under each a flap that draws in towards the tip. */
export function starRing(ring: StarRing, chosen: Chosen): PieceSpec {
  const points = pointsOf(chosen);
  const [tip, hollow] = [180 - tipDeg(chosen), tipDeg(chosen) + 360 / points - 180];
  const walls = count(2 * points).map((at) => `${ring.wall}${at}`);
  const [first = '', last = ''] = [walls[0], walls.at(-1)];
  const panels: Record<string, PanelSpec> = {};
  walls.forEach((wall, at) => {
    const before = walls[at - 1];
    const spec = { role: 'wall', size: [ring.side, ring.height] } as const;
    panels[wall] =
      before === undefined ? spec : { ...spec, on: `${before}.right`, fold: at % 2 === 1 ? tip : hollow };
  });
  panels[ring.tab] = { role: 'glueTab', size: ['tab', ring.height], on: `${last}.right`, fold: hollow };
  walls.forEach((wall, at) => {
    panels[`${ring.flap}${at + 1}`] = {
      role: 'bottomFlap',
      size: [ring.side, 'flap'],
      on: `${wall}.down`,
      taper: at % 2 === 0 ? ['0', 'tipTaper'] : ['tipTaper', '0'],
      fold: 90,
    };
  });
  return {
    label: ring.label,
    ...(ring.lid ? { lid: true as const } : {}),
    panels,
    joints: [{ panel: ring.tab, onto: first, lap: 'inside' }],
    seams: [[`${last}.right`, `${first}.left`]],
    closing: [
      {
        do: 'fold',
        panels: [...walls.slice(1), ring.tab],
        tip: 'Crease the tips toward you and the hollows away from you, by turns.',
      },
      { do: 'glue', panel: ring.tab, onto: first },
      { do: 'fold', panels: walls.map((_, at) => `${ring.flap}${at + 1}`), tip: ring.tip },
    ],
    shell: walls,
    roomFormula: `${points} * ${ring.side} ** 2 * ${shareText(chosen)} * ${ring.height}`,
    roomMm3: (values) =>
      points *
      (values[ring.side] ?? 0) *
      reachOf(values[ring.side] ?? 0, chosen) *
      (values[ring.height] ?? 0),
  };
}

/** The plate that is glued inside onto the flaps: the polygon between the hollows, and a tip on each of its edges, all one card. */
export function starPlate(
  {
    label,
    lid,
    panel,
    edge,
    tip,
  }: { label: string; lid?: true; panel: 'floor' | 'top'; edge: Len; tip: Len },
  chosen: Chosen,
): PieceSpec {
  const role = panel === 'floor' ? 'base' : 'cover';
  const panels: Record<string, PanelSpec> = { [panel]: { role, regular: pointsOf(chosen), side: edge } };
  for (const at of count(pointsOf(chosen)))
    panels[`tip${at}`] = { role, outline: [[`1/2 ${edge}`, tip]], on: `${panel}.e${at - 1}`, flush: true };
  return {
    label,
    ...(lid ? { lid: true as const } : {}),
    panels,
    joints: [],
    closing: [],
    shell: [],
    roomFormula: '0',
    roomMm3: () => 0,
  };
}

/** The star itself: its ring, and the floor that is lowered into it. */
export const starAndFloor = (chosen: Chosen): Pieces => ({
  star: starRing(
    {
      label: 'Star',
      wall: 'wall',
      tab: 'tab',
      flap: 'flap',
      side: 'side',
      height: 'height',
      tip: 'Spread glue on the flaps and lower the floor onto them from above.',
    },
    chosen,
  ),
  floor: starPlate({ label: 'Floor', panel: 'floor', edge: 'floorEdge', tip: 'floorTip' }, chosen),
});

type Reach = (values: Values, chosen: Chosen) => number;

/** From the middle of the star to the line of the wall of that name, mm. */
export const wallReach =
  (side: string): Reach =>
  (values, chosen) =>
    reachOf(values[side] ?? 0, chosen);

/** From the middle of a plate inside those walls to the line of its edge: a caliper and 1/32 in in from every wall, mm. */
export const plateReach =
  (side: string): Reach =>
  (values, chosen) =>
    reachOf(values[side] ?? 0, chosen) - (values['t'] ?? 0) - PLATE_EASE_MM;

/** Edge of the polygon between a plate's hollows, mm. */
export const plateEdge =
  (side: string): Reach =>
  (values, chosen) =>
    2 *
    (values[side] ?? 0) *
    Math.sin(halfTip(chosen)) *
    (plateReach(side)(values, chosen) / reachOf(values[side] ?? 0, chosen));

/** From that polygon out to the plate's tip, mm. */
export const plateTip =
  (edge: string): Reach =>
  (values, chosen) =>
    (values[edge] ?? 0) / 2 / Math.tan(halfTip(chosen));

/** The wall of a star whose every wall lies so much farther out, mm. */
export const wallFor = (sideMm: number, outMm: number, chosen: Chosen): number =>
  sideMm * (1 + outMm / reachOf(sideMm, chosen));

/** The same steps as text, for a style file: degrees, and a share of the wall. */
export const STAR_WORKINGS = {
  turn: '180 / number(points)',
  tip: Object.entries(TIP_DEG).reduce(
    (others, [points, deg]) =>
      others === '' ? `${deg / 2}` : `points == "${points}" ? ${deg / 2} : ${others}`,
    '',
  ),
  spread: 'sin(turn + tip) * sin(tip) / sin(turn)',
};

/** What stands beside `wallReach`, `plateReach`, `plateEdge` and `plateTip`, as text. */
export const wallReachText = (side: string): string => `${side} * spread`;
export const plateReachText = (side: string): string => `${side} * spread - t - ${PLATE_EASE_MM} * mm`;
export const plateEdgeText = (side: string): string =>
  `2 * ${side} * sin(tip) * ((${plateReachText(side)}) / (${side} * spread))`;
export const plateTipText = (edge: string): string => `${edge} / 2 / tan(tip)`;

export const STAR_QUANTITIES = {
  across: {
    means: 'from the middle of the star to a tip',
    formula: 'side * spread / sin(tip)',
    of: (values, chosen) => reachOf(values['side'] ?? 0, chosen) / Math.sin(halfTip(chosen)),
  },
  itemSquare: {
    means: 'side of a square within the circle that the lines between the hollows touch',
    formula: 'sqrt(2) * side * sin(tip) / tan(turn)',
    of: ({ side = 0 }, chosen) =>
      (Math.SQRT2 * side * Math.sin(halfTip(chosen))) / Math.tan(halfTurn(chosen)),
  },
  tipTaper: {
    means: 'how far a flap draws in at the tip, to stay clear of the one across it',
    formula: '1.05 * flap / tan(tip)',
    of: ({ flap = 0 }, chosen) => (1.05 * flap) / Math.tan(halfTip(chosen)),
  },
  flapMost: {
    means: 'longest flap that keeps a quarter inch of straight edge beside its tip',
    formula: `(side - ${FLAP_LEFT_MM} * mm) * tan(tip) / 1.05`,
    of: ({ side = 0 }, chosen) => ((side - FLAP_LEFT_MM) * Math.tan(halfTip(chosen))) / 1.05,
  },
  floorEdge: {
    means:
      'edge of the polygon between the floor’s hollows, the whole floor a caliper and 1/32 in in from every wall',
    formula: plateEdgeText('side'),
    of: plateEdge('side'),
  },
  wallReach: {
    means: 'from the middle of the star to the line of a wall',
    formula: wallReachText('side'),
    of: wallReach('side'),
  },
  floorReach: {
    means: 'from the middle of the floor to the line of its edge',
    formula: plateReachText('side'),
    of: plateReach('side'),
  },
  floorTip: {
    means: 'from that polygon out to the floor’s tip',
    formula: plateTipText('floorEdge'),
    of: plateTip('floorEdge'),
  },
} as const satisfies Record<string, Quantity>;

export const STAR_LIMITS: readonly ConstraintSpec[] = [
  {
    code: 'flaps-fill-tips',
    symbol: 'flap',
    atMost: 'flapMost',
    severity: 'stop',
    says: 'Bottom flaps {flap} are cut to a point in the tips of walls {side} long.',
    remedy: 'Make them at most {limit}, or the walls longer.',
  },
  {
    code: 'tab-fills-tip',
    symbol: 'tab',
    atMost: '3/4 side',
    severity: 'stop',
    says: 'A glue tab {tab} wide runs into the tip of the wall it is glued to, {side} long.',
    remedy: 'Make it at most {limit}.',
  },
];

export const STAR_FLOOR_FIT: FitSpec = {
  // half of two walls, and the glue tab inside one of them
  what: 'floor between the walls',
  room: '2 wallReach',
  body: '2 floorReach',
  card: '2t',
  ease: '1/16 in',
  marks: 4,
  truest: 'the width of the walls and of the floor',
  saves: 'Cut the floor last and try it before you glue it.',
};
