import type { Contents, Item } from '../rows/contents';
import { checkArrangement } from './check-arrangement';
import { packCircles } from './circle-patterns';
import { type Block, combineBlocks, EXACT_UP_TO } from './combine-blocks';
import { gridCuboids } from './cuboid-grids';
import { turnToFit } from './packet-diagonal';
import { paretoBy } from './pareto';
import { stackSpheres } from './sphere-layers';
import type { Arrangement, Placed, Vec } from './types';

const KEPT_PER_THING = 8; // so that four groups combine within a tenth of a second
const KEPT_IN_ALL = 24; // more rows than a maker reads

/**
 * The ways the contents can lie that no other way beats in width, depth and height, least card round them first. Millimeters, wrap included,
 * clearance not. Things standing out above the rim are counted only up to it. Empty contents give no arrangement.
 */
export function arrangeContents(contents: Contents): Arrangement[] {
  const groups = asBlocks(contents.items);
  return shortlist(combineAll(groups), KEPT_IN_ALL).filter(
    (way) => checkArrangement(way, above(contents)).length === 0,
  );
}

const above = ({ items }: Contents): number => Math.max(0, ...items.map(({ aboveRimMm }) => aboveRimMm));

/** Beyond eight groups the last are put together first and count as one. */
function combineAll(groups: readonly Group[]): readonly Arrangement[] {
  const [alone] = groups;
  if (alone && groups.length === 1) return alone.ways;
  if (groups.length <= GROUPS_AT_ONCE) return combined(groups);
  const rest = combineAll(groups.slice(GROUPS_AT_ONCE - 1));
  return combined([...groups.slice(0, GROUPS_AT_ONCE - 1), { ways: shortlist(rest, 3), single: false }]);
}

interface Group {
  readonly ways: readonly Arrangement[];
  /** One thing alone, which may stand in every way it has. */
  readonly single: boolean;
}

/** How many ways of each group are combined, by how many groups there are: the work grows with the power of the groups. */
const KEPT_BY_GROUPS = [8, 8, 8, 5, 3]; // source: our choice; four groups within half a second
const GROUPS_AT_ONCE = 8;

/** Up to four things in all are placed one by one, so that their combination is exact; more are grouped by kind. */
function asBlocks(items: readonly Item[]): Group[] {
  const things = items.reduce((sum, { count }) => sum + count, 0);
  if (things <= EXACT_UP_TO && items.length > 1)
    return items.flatMap((item) =>
      Array.from({ length: item.count }, () => ({ ways: arrangeAlike(item, 1), single: true })),
    );
  return items.map((item) => ({ ways: arrangeAlike(item, item.count), single: item.count === 1 }));
}

function combined(groups: readonly Group[]): Arrangement[] {
  const most = KEPT_BY_GROUPS[groups.length] ?? 3;
  const single = groups.every((group) => group.single);
  const blocks = groups.map(
    ({ ways }): Block => ({
      options: (single && groups.length <= EXACT_UP_TO ? ways : ways.slice(0, most)).map(({ size }) => size),
    }),
  );
  return combineBlocks(blocks).map(({ size, exact, placed }) => {
    const chosen = placed.map(({ option, at }, b) => ({ way: groups[b]?.ways[option], at }));
    return {
      pattern: [...new Set(chosen.map(({ way }) => way?.pattern ?? ''))].join(' beside '),
      exact: exact && single && chosen.every(({ way }) => way?.exact),
      size,
      placed: chosen.flatMap(({ way, at }) => (way?.placed ?? []).map((one) => moved(one, at))),
    };
  });
}

function moved(one: Placed, by: Vec): Placed {
  return { ...one, at: [one.at[0] + by[0], one.at[1] + by[1], one.at[2] + by[2]] };
}

/** `count` of one thing. */
function arrangeAlike(item: Item, count: number): Arrangement[] {
  const wrapped = (mm: number) => mm + 2 * item.wrapMm;
  const { size } = item;
  switch (size.shape) {
    case 'packet':
      return shortlist(
        [
          ...standCuboids(item, count),
          ...(item.thisWayUp || item.aboveRimMm > 0 ? [] : acrossCorners(item, count)),
        ],
        KEPT_PER_THING,
      );
    case 'cuboid':
    case 'soft':
      return shortlist(standCuboids(item, count), KEPT_PER_THING);
    case 'sphere':
      return shortlist(stackSpheres(item.id, wrapped(size.diameterMm), count, item.fragile), KEPT_PER_THING);
    case 'pot':
      return shortlist(
        standCylinders(item, wrapped(size.diameterMm), wrapped(size.heightMm), count),
        KEPT_PER_THING,
      );
    case 'cylinder': {
      const [across, long] = [wrapped(size.diameterMm), wrapped(size.heightMm)];
      const stands = size.lies !== 'lying' || item.thisWayUp;
      const lies = size.lies !== 'standing' && !item.thisWayUp;
      return shortlist(
        [
          ...(stands ? standCylinders(item, across, long, count) : []),
          ...(lies ? layCylinders(item, across, long, count) : []),
        ],
        KEPT_PER_THING,
      );
    }
  }
}

function standCuboids(item: Item, count: number): Arrangement[] {
  const { size } = item;
  if (!('widthMm' in size)) return [];
  const upright = item.thisWayUp || size.shape === 'soft' || item.aboveRimMm > 0;
  const grids = gridCuboids(item.id, cuboidOf(item, size), count, upright);
  // Nothing stands on what is tender, or on what stands out above the rim.
  return item.fragile || item.aboveRimMm > 0
    ? grids.filter(({ placed }) => placed.every(({ at }) => at[2] === 0))
    : grids;
}

const cuboidOf = (
  item: Item,
  size: { readonly widthMm: number; readonly depthMm: number; readonly heightMm: number },
): Vec => [
  size.widthMm + 2 * item.wrapMm,
  size.depthMm + 2 * item.wrapMm,
  size.heightMm + 2 * item.wrapMm - item.aboveRimMm,
];

/** Flat packets in one pile, turned across the corners of a square floor, where that floor is shorter than the packet (Wetzel's condition). */
function acrossCorners(item: Item, count: number): Arrangement[] {
  const { size } = item;
  if (!('widthMm' in size)) return [];
  const [thin, short, long] = [...cuboidOf(item, size)].sort((a, b) => a - b) as [number, number, number];
  const side = (long + short) / Math.SQRT2 + 1e-9; // a hair, so that rounding never says no
  if (side >= long) return [];
  const turnDeg = turnToFit([long, short], [side, side]);
  if (turnDeg === null) return [];
  return [
    {
      pattern: 'flat, across the corners of a square floor',
      exact: false,
      size: [side, side, thin * count],
      placed: Array.from(
        { length: count },
        (_, n): Placed => ({
          item: item.id,
          shape: 'cuboid',
          at: [(side - long) / 2, (side - short) / 2, n * thin],
          size: [long, short, thin],
          turnDeg,
        }),
      ),
    },
  ];
}

/** Standing in one layer, or in level layers one on another where nothing sticks out. */
function standCylinders(item: Item, diameter: number, height: number, count: number): Arrangement[] {
  const layersMost = item.aboveRimMm > 0 || item.fragile ? 1 : Math.min(3, count);
  return Array.from({ length: layersMost }, (_, i) => i + 1).flatMap((layers) => {
    const each = Math.ceil(count / layers);
    return packCircles(diameter, each).map(
      ({ name, width, depth, centres, knownLeast }): Arrangement => ({
        pattern: layers === 1 ? `standing, ${name}` : `standing in ${layers} layers, ${name}`,
        exact: knownLeast && layers === 1,
        size: [width, depth, layers * height - item.aboveRimMm],
        placed: Array.from({ length: count }, (_, n): Placed => {
          const [x, y] = centres[n % each] ?? [0, 0];
          const z = Math.floor(n / each) * height;
          return {
            item: item.id,
            shape: 'cylinder',
            at: [x, y, z + height / 2],
            diameter,
            height,
            lies: 'z',
          };
        }),
      }),
    );
  });
}

/** Lying in one bundle, all the same way; the circles of the bundle's cross-section stand up from the floor. */
function layCylinders(item: Item, diameter: number, long: number, count: number): Arrangement[] {
  return packCircles(diameter, count).map(
    ({ name, width, depth, centres }): Arrangement => ({
      pattern: `lying, ${name}`,
      exact: false,
      size: [long, width, depth],
      placed: centres.map(
        ([y, z]): Placed => ({
          item: item.id,
          shape: 'cylinder',
          at: [long / 2, y, z],
          diameter,
          height: long,
          lies: 'x',
        }),
      ),
    }),
  );
}

/**
 * Turned a quarter about the upright a box is the same box, so wider-than-deep stands for both; then the Pareto rows, least card first. The
 * row whose longest side is the shortest is always among them: it is the one for a small sheet.
 */
function shortlist(ways: readonly Arrangement[], most: number): Arrangement[] {
  const rows = paretoBy(ways.map(widerThanDeep), ({ size }) =>
    size.map((side) => Math.round(side * 1e6)),
  ).sort((a, b) => surfaceOf(a.size) - surfaceOf(b.size));
  if (rows.length <= most) return rows;
  const longest = ({ size }: Arrangement) => Math.max(...size);
  const compact = rows.reduce((a, b) => (longest(b) < longest(a) - 1e-6 ? b : a));
  const first = rows.slice(0, most);
  return first.includes(compact) ? first : [...first.slice(0, -1), compact];
}

/** What a box round it takes of card: a long thin row and a square of the same volume are told apart. */
const surfaceOf = ([w, d, h]: Vec): number => w * d + d * h + h * w;

function widerThanDeep(way: Arrangement): Arrangement {
  const [w, d, h] = way.size;
  if (w >= d) return way;
  return { ...way, size: [d, w, h], placed: way.placed.map(quarterTurned) };
}

const SWAPPED = { x: 'y', y: 'x', z: 'z' } as const;

/** Mirrored across the floor's diagonal: as good as a quarter turn for things that are their own mirror image. */
function quarterTurned(one: Placed): Placed {
  const [x, y, z] = one.at;
  if (one.shape === 'cuboid')
    return { ...one, at: [y, x, z], size: [one.size[1], one.size[0], one.size[2]], turnDeg: -one.turnDeg };
  if (one.shape === 'cylinder') return { ...one, at: [y, x, z], lies: SWAPPED[one.lies] };
  return { ...one, at: [y, x, z] };
}
