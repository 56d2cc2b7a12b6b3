import type { Contents, Item } from '../../../shared/contents';
import { packCircles } from './circle-patterns';
import { type Block, combineBlocks, EXACT_UP_TO } from './combine-blocks';
import { gridCuboids } from './cuboid-grids';
import { paretoBy } from './pareto';
import { stackSpheres } from './sphere-layers';
import type { Arrangement, Placed, Vec } from './types';

const KEPT_PER_THING = 8; // so that four groups combine within a tenth of a second
const KEPT_IN_ALL = 24; // more rows than a maker reads

/**
 * The ways the contents can lie that no other way beats in width, depth and height, least card round them first. Millimetres, wrap included,
 * clearance not. Things standing out above the rim are counted only up to it. Empty contents give no arrangement.
 */
export function arrangeContents(contents: Contents): Arrangement[] {
  const groups = asBlocks(contents.items);
  const alone = groups.length === 1 ? groups[0] : undefined;
  const all = alone ? alone.ways : combined(groups);
  return shortlist(all, KEPT_IN_ALL);
}

interface Group {
  readonly ways: readonly Arrangement[];
}

/** Up to four things in all are placed one by one, so that their combination is exact; more are grouped by kind. */
function asBlocks(items: readonly Item[]): Group[] {
  const things = items.reduce((sum, { count }) => sum + count, 0);
  if (things <= EXACT_UP_TO && items.length > 1)
    return items.flatMap((item) =>
      Array.from({ length: item.count }, () => ({ ways: arrangeAlike(item, 1) })),
    );
  return items.map((item) => ({ ways: arrangeAlike(item, item.count) }));
}

function combined(groups: readonly Group[]): Arrangement[] {
  const blocks = groups.map(({ ways }): Block => ({ options: ways.map(({ size }) => size) }));
  return combineBlocks(blocks).map(({ size, exact, placed }) => {
    const chosen = placed.map(({ option, at }, b) => ({ way: groups[b]?.ways[option], at }));
    return {
      pattern: [...new Set(chosen.map(({ way }) => way?.pattern ?? ''))].join(' beside '),
      exact: exact && chosen.every(({ way }) => way?.exact),
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
    case 'cuboid':
    case 'packet':
    case 'soft': {
      const upright = item.thisWayUp || size.shape === 'soft' || item.aboveRimMm > 0;
      const stood: Vec = [
        wrapped(size.widthMm),
        wrapped(size.depthMm),
        wrapped(size.heightMm) - item.aboveRimMm,
      ];
      return shortlist(gridCuboids(item.id, stood, count, upright), KEPT_PER_THING);
    }
    case 'sphere':
      return shortlist(stackSpheres(item.id, wrapped(size.diameterMm), count), KEPT_PER_THING);
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

/** Turned a quarter about the upright a box is the same box, so wider-than-deep stands for both; then the Pareto rows, least card first. */
function shortlist(ways: readonly Arrangement[], most: number): Arrangement[] {
  return paretoBy(ways.map(widerThanDeep), ({ size }) => size.map((side) => Math.round(side * 1e6)))
    .sort((a, b) => surfaceOf(a.size) - surfaceOf(b.size))
    .slice(0, most);
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
  if (one.shape === 'cuboid') return { ...one, at: [y, x, z], size: [one.size[1], one.size[0], one.size[2]] };
  if (one.shape === 'cylinder') return { ...one, at: [y, x, z], lies: SWAPPED[one.lies] };
  return { ...one, at: [y, x, z] };
}
