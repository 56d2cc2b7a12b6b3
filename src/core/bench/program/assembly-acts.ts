import type { ClosingAct, NetEdge, PieceNet } from '../../net/types';
import { byLine, type LaidSegment, laySegment, type Segment, segmentOn } from '../equal/line-stretches';
import type { BenchOp } from '../types';
import { type MakerFold, makerFolds } from './maker-folds';

type Op<Name extends BenchOp['op']> = Extract<BenchOp, { op: Name }>;

/** The folds that give every score its sense and angle: one act for each panel and angle, in the order of the fold tree. */
export function foldActs(piece: PieceNet): readonly Op<'fold'>[] {
  const foldOf = makerFolds(piece);
  const scores = piece.edges.filter((edge) => edge.kind === 'score' && foldOf(edge) !== 0);
  const acts = new Map<string, { panel: string; deg: number; scores: LaidSegment[] }>();
  for (const edge of scores.sort((one, other) => rank(one) - rank(other))) {
    const panel = foldedPanel(piece, edge);
    const deg = foldOf(edge);
    const key = `${panel} ${deg} ${edge.curve}`;
    const known = acts.get(key);
    if (known) known.scores.push(laySegment(edge));
    else acts.set(key, { panel, deg, scores: [laySegment(edge)] });
  }
  return [...acts.values()].map(({ panel, deg, scores }) => ({
    op: 'fold',
    panel,
    deg,
    lines: wholeLines(scores),
  }));
}

/** Edges that run on in one line as one. */
const wholeLines = (scores: readonly LaidSegment[]): readonly Segment[] =>
  [...byLine(scores).values()].flatMap(({ line, stretches }) =>
    stretches.map((part) => segmentOn(line, part)),
  );

/** Creases off the fold tree come last. */
const rank = (edge: NetEdge): number => edge.hinge ?? Number.MAX_SAFE_INTEGER;

/** The panel that a score folds; a crease off the tree is named for the panel on its left. */
function foldedPanel(piece: PieceNet, edge: NetEdge): string {
  const hinge = edge.hinge === null ? undefined : piece.hinges[edge.hinge];
  return hinge?.panel ?? piece.faces[edge.left]?.panel ?? '';
}

/** Gluing and closing, in the order hands do it. */
export function closingActs(piece: PieceNet): readonly (Op<'glue'> | Op<'close'>)[] {
  const foldOf = makerFolds(piece);
  return piece.closing.map((act) => (act.do === 'glue' ? glueAct(piece, act) : closeAct(piece, act, foldOf)));
}

function glueAct(piece: PieceNet, { joint, tip }: Extract<ClosingAct, { do: 'glue' }>): Op<'glue'> {
  const glued = piece.joints[joint];
  const panelOf = (face: number | undefined): string => piece.faces[face ?? -1]?.panel ?? '';
  return {
    op: 'glue',
    panel: panelOf(glued?.tab),
    onto: panelOf(glued?.target),
    lap: glued?.lap ?? 'inside',
    tip,
  };
}

/** A bent panel also turns at its modelling lines; the first panel has no score of its own and only bends. */
function closeAct(piece: PieceNet, act: Exclude<ClosingAct, { do: 'glue' }>, foldOf: MakerFold): Op<'close'> {
  const turn = (panel: string): number => {
    for (const [i, at] of act.hinges.entries()) {
      const hinge = piece.hinges[at];
      if (hinge?.panel !== panel || hinge.kind !== 'score') continue;
      const to = act.toDeg[i] ?? 0;
      return to !== 0 && to === hinge.restDeg ? foldOf({ hinge: at, foldDeg: to }) : to;
    }
    return 0;
  };
  const { panels, bends, tip } = act;
  return { op: 'close', panels, by: act.do, toDeg: panels.map(turn), bends, tip };
}
