import { type DesignedNet, layOf } from './compare';
import { type Deed, type FlatCard, type Folded, pairOf } from './fold-by-words';
import type { At } from './lengths';
import { workOf } from './line-work';
import type { ReadBack } from './read-card';

/** The designed piece with what it does when it is closed, as plain data. */
export interface DesignedPiece extends DesignedNet {
  readonly faces: readonly {
    readonly panel: string;
    readonly ring: readonly { readonly x: number; readonly y: number }[];
  }[];
  readonly hinges: readonly {
    readonly parent: number;
    readonly child: number;
    readonly kind: string;
    readonly a: { readonly x: number; readonly y: number };
    readonly b: { readonly x: number; readonly y: number };
  }[];
  readonly joints: readonly { readonly tab: number; readonly target: number; readonly lap: string }[];
  readonly closing: readonly (
    | { readonly do: 'glue'; readonly joint: number }
    | { readonly do: 'fold' | 'tuck'; readonly hinges: readonly number[]; readonly toDeg: readonly number[] }
  )[];
}

type Names = ReadonlyMap<string, string>;

/** The flat card with its names; which way each line was creased is read off the card that was made of the words. */
export function flatCard(piece: DesignedPiece, names: Names, made: ReadBack | null): FlatCard {
  const nameOf = (face: number): string => names.get(piece.faces[face]?.panel ?? '') ?? '';
  const areas = new Map<string, number>();
  piece.faces.forEach(({ ring }, face) => {
    areas.set(nameOf(face), (areas.get(nameOf(face)) ?? 0) + areaOf(ring));
  });
  const creased = made === null ? () => null : creasesOf(made, piece);
  const lines = new Map<string, FlatCard['lines'][number]>();
  for (const { parent, child, kind, a, b } of piece.hinges) {
    const between = [nameOf(parent), nameOf(child)] as const;
    const turns = kind === 'score';
    if (between[0] !== between[1])
      lines.set(pairOf(...between), {
        between,
        turns,
        runsDeg: ((Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI + 360) % 180,
        creased: turns ? creased([(a.x + b.x) / 2, (a.y + b.y) / 2]) : null,
      });
  }
  return { panels: [...areas].map(([name, area]) => ({ name, area })), lines: [...lines.values()] };
}

const areaOf = (ring: DesignedPiece['faces'][number]['ring']): number =>
  Math.abs(
    ring.reduce((sum, { x, y }, i) => {
      const next = ring[(i + 1) % ring.length] ?? { x, y };
      return sum + x * next.y - next.x * y;
    }, 0),
  ) / 2;

/** Which way the line through a place of the net was creased. */
function creasesOf(made: ReadBack, net: DesignedNet): (at: At) => 'in' | 'out' | null {
  const lay = layOf(made, net);
  if (!lay) return () => null;
  const lines = workOf(made.card, made.overBead).map(({ a, b, work }) => ({ a: lay(a), b: lay(b), work }));
  return (at) => {
    const found = lines.filter((line) => line.work.startsWith('fold') && isOn(line.a, line.b, at));
    const ways = new Set(found.map(({ work }) => work));
    return ways.size === 1 ? (ways.has('fold in') ? 'in' : 'out') : null;
  };
}

/** A place may be half a 320th of a millimeter off its line. */
function isOn(a: At, b: At, [x, y]: At): boolean {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const long = Math.hypot(dx, dy);
  const far = ((x - a[0]) * dx + (y - a[1]) * dy) / long;
  return Math.abs(dx * (y - a[1]) - dy * (x - a[0])) / long < 1 && far > -1 && far < long + 1;
}

/** From here on a fold lies flat. source: our own, the words know none but flat and not flat */
const FLAT_DEG = 170;

/** What the style has hands do, spelled as a stranger’s deeds. */
export function designedDeeds(piece: DesignedPiece, names: Names): Folded {
  const nameOf = (face: number): string => names.get(piece.faces[face]?.panel ?? '') ?? '';
  const stands = new Map<number, number>();
  const deeds: Deed[] = [];
  const sticky = new Set<string>();
  for (const act of piece.closing) {
    if (act.do === 'glue') {
      const { tab = 0, target = 0, lap } = piece.joints[act.joint] ?? {};
      sticky.add(`${lap === 'inside' ? 'outside' : 'inside'} of ${nameOf(tab)}`);
      const pair = `${pairOf(nameOf(tab), nameOf(target))}, ${lap}`;
      const last = deeds.at(-1);
      if (last?.did !== 'press') deeds.push({ did: 'press', pairs: [pair] });
      else if (!last.pairs.includes(pair))
        deeds[deeds.length - 1] = { did: 'press', pairs: [...last.pairs, pair].sort() };
      continue;
    }
    const turned = new Set<string>();
    act.hinges.forEach((at, i) => {
      const hinge = piece.hinges[at];
      const [from, to] = [stands.get(at) ?? 0, act.toDeg[i] ?? 0];
      stands.set(at, to);
      if (hinge?.kind !== 'score' || from === to) return;
      const opens = Math.abs(from) >= FLAT_DEG && Math.abs(to) < FLAT_DEG;
      turned.add(
        `${pairOf(nameOf(hinge.parent), nameOf(hinge.child))} ${opens ? 'opens' : to > 0 ? 'in' : 'out'}`,
      );
    });
    deeds.push({ did: act.do, turned: [...turned].sort() });
  }
  return { deeds, sticky: [...sticky].sort() };
}
