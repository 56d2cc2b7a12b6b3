import { type Outside, outsideSize } from '../../dress';
import type { Carrier, FavorEvent } from '../../rows';
import { ticksOfMm } from '../../rows/lengths';
import { type Ticks, ticks } from '../../units';
import type { EventBox } from '../event/event-boxes';
import { remark } from '../event/remarks';
import { ceilDiv } from '../event/spares';
import type { EventFinding } from '../event/types';
import type { Timetable } from '../run/timetable';
import { type Foot, mostInLayer, type PlacedFoot, packLayer } from './pack-layer';

/** How one line's favors stand in their crates. */
export interface CarriedLine {
  readonly lineId: string;
  readonly name: string;
  readonly favors: number;
  /** On the bottom, on the back, or on a side. */
  readonly lies: 'upright' | 'on-back' | 'on-side';
  readonly layer: readonly PlacedFoot[];
  readonly layers: number;
  readonly perCrate: number;
  readonly crates: number;
  /** In the last crate. */
  readonly inLast: number;
  /** No packing with all of them the same way up and square to the crate uses fewer crates; tilted ones may. */
  readonly fewest: boolean;
}

export interface CarryPlan {
  /** The floor that favors stand on. */
  readonly floor: { readonly across: Ticks; readonly up: Ticks };
  readonly lines: readonly CarriedLine[];
  readonly crates: number;
  /** The day the schedule fills on; null without one. */
  readonly fillOn: string | null;
}

/**
 * Finished favors into equal crates, each kind in crates of its own. Two of a kind stand `wiggleMm` apart. Layers are only as many as the
 * maker says may stand on one another: no load is called safe. Null: no crate is known, or the order is kits.
 */
export function planCarry(
  event: FavorEvent,
  boxes: readonly EventBox[],
  timetable: Timetable | null,
): { readonly carry: CarryPlan | null; readonly findings: readonly EventFinding[] } {
  const { carry } = event;
  if (!carry || event.kits) return { carry: null, findings: [] };
  const floor = { across: ticksOfMm(carry.widthMm), up: ticksOfMm(carry.depthMm) };
  const made = boxes.filter(({ ordered, spares }) => ordered + spares > 0);
  const lines = made.flatMap((box) => carryLine(box, carry) ?? []);
  const left = made.filter(({ line }) => !lines.some(({ lineId }) => lineId === line.id));
  return {
    carry: {
      floor,
      lines,
      crates: lines.reduce((sum, { crates }) => sum + crates, 0),
      fillOn: timetable?.sittings.find(({ act }) => act === 'fill')?.date ?? null,
    },
    findings: left.map(({ line, recipe, net }) => {
      const { width, depth, height } = outsideSize(net);
      return remark('crate-too-small', line.id, recipe.name, { width, depth, height });
    }),
  };
}

function carryLine(
  box: Pick<EventBox, 'line' | 'recipe' | 'net' | 'ordered' | 'spares'>,
  carry: Carrier,
): CarriedLine | null {
  const favors = box.ordered + box.spares;
  const ways = waysToLie(outsideSize(box.net), carry).map((way) => {
    const layers = Math.min(carry.layers, Math.floor(ticksOfMm(carry.heightMm) / way.tall));
    return {
      ...way,
      layers,
      layer: layers > 0 ? packLayer(way.floor, way.foot) : [],
      most: layers * mostInLayer(way.floor, way.foot),
    };
  });
  const best = ways.reduce((a, b) => (b.layer.length * b.layers > a.layer.length * a.layers ? b : a));
  const perCrate = best.layer.length * best.layers;
  if (perCrate === 0) return null;
  const crates = ceilDiv(favors, perCrate);
  const most = Math.max(...ways.map((way) => way.most));
  return {
    lineId: box.line.id,
    name: box.recipe.name,
    favors,
    lies: best.lies,
    layer: best.layer.map(({ x, y, across, up }) => ({ x, y, across: across - best.gap, up: up - best.gap })),
    layers: best.layers,
    perCrate,
    crates,
    inLast: favors - (crates - 1) * perCrate,
    fewest: crates === ceilDiv(favors, most),
  };
}

interface WayToLie {
  readonly lies: CarriedLine['lies'];
  readonly foot: Foot;
  readonly tall: Ticks;
  readonly gap: Ticks;
  readonly floor: Foot;
}

/** The ways a favor may lie. Between two favors is one gap, and none at the crate's walls: every foot and the floor grow by it. */
function waysToLie({ width, depth, height }: Outside, carry: Carrier): readonly WayToLie[] {
  const gap = ticksOfMm(carry.wiggleMm);
  const floor = { across: ticksOfMm(carry.widthMm) + gap, up: ticksOfMm(carry.depthMm) + gap };
  const way = (lies: CarriedLine['lies'], across: Ticks, up: Ticks, tall: Ticks): WayToLie => ({
    lies,
    foot: { across: ticks(across + gap), up: ticks(up + gap) },
    tall,
    gap,
    floor,
  });
  return [
    way('upright', width, depth, height),
    ...(carry.mayLie ? [way('on-back', width, height, depth), way('on-side', depth, height, width)] : []),
  ];
}
