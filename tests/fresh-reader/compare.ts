import type { At } from './lengths';
import { spellWork, workOf } from './line-work';
import type { ReadBack } from './read-card';

/** The net as it was designed, as plain data: inside up, in the same 320ths of a millimeter. */
export interface DesignedNet {
  readonly blank: { readonly across: number; readonly up: number };
  readonly edges: readonly {
    readonly a: { readonly x: number; readonly y: number };
    readonly b: { readonly x: number; readonly y: number };
    readonly kind: string;
    readonly right: number | null;
    readonly foldDeg: number;
    readonly hinge: number | null;
  }[];
  readonly closing: readonly object[];
}

/** The net's lines: a score that lies flat in the end has the fold of its farthest way. */
export function spellNet({ edges, closing }: DesignedNet): string {
  const onTheWay = new Map<number, number>();
  for (const act of closing as readonly { hinges?: readonly number[]; toDeg?: readonly number[] }[])
    act.hinges?.forEach((hinge, i) => {
      const to = act.toDeg?.[i] ?? 0;
      if (Math.abs(to) > Math.abs(onTheWay.get(hinge) ?? 0)) onTheWay.set(hinge, to);
    });
  const lines = edges.flatMap(({ a, b, kind, foldDeg, hinge }) => {
    if (kind === 'join') return [];
    const fold = foldDeg === 0 ? (onTheWay.get(hinge ?? -1) ?? 0) : foldDeg;
    const work =
      kind === 'slit' ? 'slit' : kind === 'score' ? (fold < 0 ? 'fold out' : 'fold in') : 'outline';
    return [{ a: [a.x, a.y] as At, b: [b.x, b.y] as At, work }];
  });
  return spellWork(lines, (at) => at);
}

/** Is what a stranger made the designed piece of card? It may lie on the table turned, never turned over; a piece with no side named may. */
export function isThisNet(made: ReadBack, net: DesignedNet): boolean {
  return layOf(made, net) !== null;
}

/** How the made card has to be laid to lie as the net does; null if it is another. */
export function layOf(made: ReadBack, net: DesignedNet): ((at: At) => At) | null {
  const wanted = spellNet(net);
  return lays(made).find(({ spelled }) => spelled === wanted)?.lay ?? null;
}

/** What the made card looks like, as it may lie first. */
export const firstLook = (made: ReadBack): string | undefined => lays(made)[0]?.spelled;

interface Laid {
  readonly lay: (at: At) => At;
  readonly spelled: string;
}

/** The made card in the net's frame, as many ways as it may lie. */
function lays({ card, overBead }: ReadBack): Laid[] {
  const lines = workOf(card, overBead);
  const { width, height } = card;
  const over = ([x, y]: At): At => [width - x, y];
  const turns: ((at: At) => At)[] = [
    (at) => at,
    ([x, y]) => [height - y, x],
    ([x, y]) => [width - x, height - y],
    ([x, y]) => [y, width - x],
  ];
  const sideless = card.scores.length === 0;
  return turns
    .flatMap((turn): Laid['lay'][] => [
      ...(card.firstGoodUp || sideless ? [(at: At) => turn(over(at))] : []),
      ...(!card.firstGoodUp || sideless ? [turn] : []),
    ])
    .map((lay) => ({ lay, spelled: spellWork(lines, lay) }));
}

/** Kinds of tape strips on a card, each once. Strips alike on several panels are said together. */
export const spellTape = (strips: readonly object[]): string[] => {
  const said = strips.flatMap((strip) => {
    const { face, tape = strip } = strip as { face?: string; tape?: unknown };
    const given = tape as { strips?: number; length?: number };
    return given.strips === undefined ? [] : [`${face} ${given.strips} of ${given.length}`];
  });
  return [...new Set(said)].sort();
};
