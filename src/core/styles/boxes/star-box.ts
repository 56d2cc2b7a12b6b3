import { defineStyle } from '../language/define';
import type { Chosen, PanelSpec, PieceSpec, Values } from '../language/types';
import { allowanceOf, sizeOf } from '../shapes/size-symbols';

/** How sharp a tip is for so many tips, degrees: the five- and six-pointed star of the school book, and eight tips that stand square. */
const TIP_DEG: Readonly<Record<string, number>> = { 5: 36, 6: 60, 8: 90 };
/** Card left straight at the free edge of a flap. source: our choice */
const FLAP_LEFT_MM = 6.35;

/** Clear of every wall, so that the floor drops in untrimmed. source: 1/32 in, common practice, no source */
const FLOOR_EASE_MM = 0.79375;

const pointsOf = (chosen: Chosen): number => Number(chosen['points'] ?? 5);
const tipDeg = (chosen: Chosen): number => TIP_DEG[pointsOf(chosen)] ?? 36;
const halfTip = (chosen: Chosen): number => (tipDeg(chosen) * Math.PI) / 360;
const halfTurn = (chosen: Chosen): number => Math.PI / pointsOf(chosen);
const count = (many: number): readonly number[] => Array.from({ length: many }, (_, at) => at + 1);

/** From the middle of the star to the line of a wall. */
const reachOf = ({ side = 0 }: Values, chosen: Chosen): number =>
  (side * Math.sin(halfTurn(chosen) + halfTip(chosen)) * Math.sin(halfTip(chosen))) /
  Math.sin(halfTurn(chosen));

/** Walls in and out by turns, and under each a flap that draws in towards the tip. */
function bodyOf(chosen: Chosen): PieceSpec {
  const points = pointsOf(chosen);
  const [tip, hollow] = [180 - tipDeg(chosen), tipDeg(chosen) + 360 / points - 180];
  const walls = count(2 * points).map((at) => `wall${at}`);
  const panels: Record<string, PanelSpec> = {};
  walls.forEach((wall, at) => {
    const before = walls[at - 1];
    const spec = { role: 'wall', size: ['side', 'height'] } as const;
    panels[wall] =
      before === undefined ? spec : { ...spec, on: `${before}.right`, fold: at % 2 === 1 ? tip : hollow };
  });
  panels['tab'] = { role: 'glueTab', size: ['tab', 'height'], on: `wall${2 * points}.right`, fold: hollow };
  walls.forEach((wall, at) => {
    panels[`flap${at + 1}`] = {
      role: 'bottomFlap',
      size: ['side', 'flap'],
      on: `${wall}.down`,
      taper: at % 2 === 0 ? ['0', 'tipTaper'] : ['tipTaper', '0'],
      fold: 90,
    };
  });
  return {
    label: 'Star',
    panels,
    joints: [{ panel: 'tab', onto: 'wall1', lap: 'inside' }],
    seams: [[`wall${2 * points}.right`, 'wall1.left']],
    closing: [
      {
        do: 'fold',
        panels: [...walls.slice(1), 'tab'],
        tip: 'Crease the tips toward you and the hollows away from you, by turns.',
      },
      { do: 'glue', panel: 'tab', onto: 'wall1' },
      {
        do: 'fold',
        panels: walls.map((_, at) => `flap${at + 1}`),
        tip: 'Spread glue on the flaps and lower the floor onto them from above.',
      },
    ],
    shell: walls,
    roomMm3: (values) => points * (values['side'] ?? 0) * reachOf(values, chosen) * (values['height'] ?? 0),
  };
}

/** The floor that is glued inside onto the flaps: the polygon between the hollows, and a tip on each of its edges, all one card. */
function floorOf(chosen: Chosen): PieceSpec {
  const panels: Record<string, PanelSpec> = {
    floor: { role: 'base', regular: pointsOf(chosen), side: 'floorEdge' },
  };
  for (const at of count(pointsOf(chosen)))
    panels[`tip${at}`] = {
      role: 'base',
      outline: [['1/2 floorEdge', 'floorTip']],
      on: `floor.e${at - 1}`,
      flush: true,
    };
  return { label: 'Floor', panels, joints: [], closing: [], shell: [], roomMm3: () => 0 };
}

/** A star of five, six or eight tips. Geometry: plane geometry of star polygons; construction: common practice, no source. No code of practice has a family for it (from memory). */
export const starBox = defineStyle({
  id: 'star-box',
  version: 1,
  name: 'Star box',
  source: 'plane geometry of star polygons; construction common practice, no source',
  goodFor: 'Candy at each place, a small gift in tissue: a box to look at from above.',
  watchOut: 'The tips hold little, so count on the middle only. Every second score folds the other way.',
  symbols: {
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
  },
  inside: ['itemSquare - t', 'itemSquare - t', 'height - 5/2 t'],
  options: {
    points: {
      label: 'Tips',
      help: 'How many tips the star has; it has twice as many walls.',
      choices: [5, 6, 8].map((points) => ({ id: String(points), label: String(points) })),
    },
  },
  quantities: {
    across: {
      means: 'from the middle of the star to a tip',
      of: (values, chosen) => reachOf(values, chosen) / Math.sin(halfTip(chosen)),
    },
    itemSquare: {
      means: 'side of a square within the circle that the lines between the hollows touch',
      of: ({ side = 0 }, chosen) =>
        (Math.SQRT2 * side * Math.sin(halfTip(chosen))) / Math.tan(halfTurn(chosen)),
    },
    tipTaper: {
      means: 'how far a flap draws in at the tip, to stay clear of the one across it',
      of: ({ flap = 0 }, chosen) => (1.05 * flap) / Math.tan(halfTip(chosen)),
    },
    flapMost: {
      means: 'longest flap that keeps a quarter inch of straight edge beside its tip',
      of: ({ side = 0 }, chosen) => ((side - FLAP_LEFT_MM) * Math.tan(halfTip(chosen))) / 1.05,
    },
    floorEdge: {
      means:
        'edge of the polygon between the floor’s hollows, the whole floor a caliper and 1/32 in in from every wall',
      of: (values, chosen) =>
        2 *
        (values['side'] ?? 0) *
        Math.sin(halfTip(chosen)) *
        (1 - ((values['t'] ?? 0) + FLOOR_EASE_MM) / reachOf(values, chosen)),
    },
    wallReach: { means: 'from the middle of the star to the line of a wall', of: reachOf },
    floorReach: {
      means: 'from the middle of the floor to the line of its edge',
      of: (values, chosen) => reachOf(values, chosen) - (values['t'] ?? 0) - FLOOR_EASE_MM,
    },
    floorTip: {
      means: 'from that polygon out to the floor’s tip',
      of: ({ floorEdge = 0 }, chosen) => floorEdge / 2 / Math.tan(halfTip(chosen)),
    },
  },
  pieces: (chosen) => ({ star: bodyOf(chosen), floor: floorOf(chosen) }),
  constraints: [
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
  ],
  promises: [],
  fits: [
    {
      // half of two walls, and the glue tab inside one of them
      what: 'floor between the walls',
      room: '2 wallReach',
      body: '2 floorReach',
      card: '2t',
      ease: '1/16 in',
      marks: 4,
      truest: 'the width of the walls and of the floor',
      saves: 'Cut the floor last and try it before you glue it.',
    },
  ],
  traits: [],
});
