import type { NetEdge, PieceNet } from '../../net/types';

/** The fold a maker gives a score, in degrees, valley positive. */
export type MakerFold = (edge: Pick<NetEdge, 'hinge' | 'foldDeg'>) => number;

/**
 * Straight scores take the net's own fold. A curved crease is known by its least fold, in its middle, to a whole degree: hands give it
 * only its sense, and the curve itself turns the rest further (pillow-box model, arXiv 2509.02049). A score that lies flat in the end but is
 * folded on the way gets its farthest fold of that way.
 */
export function makerFolds({ edges, closing }: PieceNet): MakerFold {
  const least = new Map<number, number>();
  const curveOf = new Map<number, number>();
  for (const { kind, curve, hinge, foldDeg } of edges) {
    if (kind !== 'score' || curve === null || hinge === null) continue;
    curveOf.set(hinge, curve);
    if (Math.abs(foldDeg) < Math.abs(least.get(curve) ?? 360)) least.set(curve, foldDeg);
  }
  const onTheWay = new Map<number, number>();
  for (const act of closing)
    if (act.do !== 'glue')
      act.hinges.forEach((hinge, at) => {
        const to = act.toDeg[at] ?? 0;
        if (Math.abs(to) > Math.abs(onTheWay.get(hinge) ?? 0)) onTheWay.set(hinge, to);
      });
  return ({ hinge, foldDeg }) => {
    if (foldDeg === 0) return onTheWay.get(hinge ?? -1) ?? 0;
    const curved = least.get(curveOf.get(hinge ?? -1) ?? -1);
    return curved === undefined ? foldDeg : Math.round(curved);
  };
}
