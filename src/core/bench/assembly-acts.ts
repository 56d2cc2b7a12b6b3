import type { ClosingAct, NetEdge, PieceNet } from '../net/types';
import type { BenchOp } from './types';

type Op<Name extends BenchOp['op']> = Extract<BenchOp, { op: Name }>;

/** The folds that give every score its sense and angle: one act for each panel and angle, in the order of the fold tree. */
export function foldActs(piece: PieceNet): readonly Op<'fold'>[] {
  const scores = piece.edges.filter((edge) => edge.kind === 'score' && edge.foldDeg !== 0);
  const acts = new Map<string, Op<'fold'>>();
  for (const edge of scores.sort((one, other) => rank(one) - rank(other))) {
    const panel = foldedPanel(piece, edge);
    const key = `${panel} ${edge.foldDeg}`;
    const lines = [...(acts.get(key)?.lines ?? []), { a: edge.a, b: edge.b }];
    acts.set(key, { op: 'fold', panel, deg: edge.foldDeg, lines });
  }
  return [...acts.values()];
}

/** Creases off the fold tree come last. */
const rank = (edge: NetEdge): number => edge.hinge ?? Number.MAX_SAFE_INTEGER;

/** The panel that a score folds; a crease off the tree is named for the panel on its left. */
function foldedPanel(piece: PieceNet, edge: NetEdge): string {
  const hinge = edge.hinge === null ? undefined : piece.hinges[edge.hinge];
  return hinge?.panel ?? piece.faces[edge.left]?.panel ?? '';
}

/** Gluing and closing, in the order hands do it. */
export const closingActs = (piece: PieceNet): readonly (Op<'glue'> | Op<'close'>)[] =>
  piece.closing.map((act) => (act.do === 'glue' ? glueAct(piece, act) : closeAct(piece, act)));

function glueAct(piece: PieceNet, act: Extract<ClosingAct, { do: 'glue' }>): Op<'glue'> {
  const joint = piece.joints[act.joint];
  const panelOf = (face: number | undefined) => (face === undefined ? '' : (piece.faces[face]?.panel ?? ''));
  return {
    op: 'glue',
    panel: panelOf(joint?.tab),
    onto: panelOf(joint?.target),
    lap: joint?.lap ?? 'inside',
    tip: act.tip,
  };
}

function closeAct(piece: PieceNet, act: Exclude<ClosingAct, { do: 'glue' }>): Op<'close'> {
  const toDeg = act.panels.map((panel) => {
    const place = act.hinges.findIndex((hinge) => piece.hinges[hinge]?.panel === panel);
    return act.toDeg[place] ?? 0;
  });
  return { op: 'close', panels: act.panels, by: act.do, toDeg, tip: act.tip };
}
