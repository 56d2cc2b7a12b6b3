import type { RoundWay, Worn } from '../fold/seen/worn';
import { panelWords } from '../net/panel-words';
import type { BoxNet } from '../net/types';
import { labelOutline } from '../plane';
import type { Dressing, Tie } from '../rows/dressing';
import { type Ticks, toMm } from '../units';
import type { Reason } from '../units/reason';
import { type SizedPiece, sizePieces } from './dress-box';
import { type InsidePiece, insidePiece } from './inside-piece';
import { placePiece } from './place-piece';

/** One thing put on a box: what the hands do, and what the closed box then wears. */
interface DressStep extends Reason {
  readonly id: string;
  readonly worn: readonly Worn[];
  /** Where it lies on the inside, for what the closed box does not show. */
  readonly inside?: InsidePiece;
}

/** A ribbon whose width nobody knows. source: common practice, no source: 3/8 in */
const USUAL_RIBBON_MM = 9.525;

const ROUND: Readonly<Record<Tie['wrap'], readonly RoundWay[]>> = {
  cross: ['front', 'sides'],
  'over-front': ['front'],
  'over-sides': ['sides'],
  ring: ['walls'],
  none: [],
  pull: [],
};

/**
 * A look as steps, in the order things are put on: what is stuck on, then bands, then ribbon. Pieces that do not fit are left
 * out. A liner or film, which the closed box does not show, has its place on the inside. `ribbonMm`: how wide a supply is.
 */
export function dressSteps(
  net: BoxNet,
  dressing: Dressing,
  mark: Ticks,
  ribbonMm: (supplyId: string | null) => number | null = () => null,
): readonly DressStep[] {
  const sized = sizePieces(net, dressing, mark).filter(({ size }) => size !== null);
  const isBand = ({ piece }: SizedPiece) => piece.kind === 'band';
  const inOrder = [...sized.filter((each) => !isBand(each)), ...sized.filter(isBand)];
  const steps = [
    ...inOrder.map((each) => stepOfPiece(net, each)),
    ...(dressing.ties ?? []).map((tie) => stepOfTie(tie, ribbonMm(tie.supplyId) ?? USUAL_RIBBON_MM)),
  ];
  let worn: readonly Worn[] = [];
  return steps.map((step) => {
    worn = [...worn, ...step.worn];
    return { ...step, worn };
  });
}

/** All that a closed box wears in a look. */
export const wornOf = (...given: Parameters<typeof dressSteps>): readonly Worn[] =>
  dressSteps(...given).at(-1)?.worn ?? [];

function stepOfPiece(net: BoxNet, { piece, size }: SizedPiece): DressStep {
  const { id, kind, fit } = piece;
  const facts = { name: { text: piece.name } };
  if (fit?.rule === 'around') {
    const way = fit.way ?? 'walls';
    const says =
      way === 'walls'
        ? 'Wrap {name} around the walls. Overlap the ends and join them.'
        : 'Wrap {name} over the top and under the bottom. Overlap the ends below and join them.';
    const strip: Worn = { kind: 'strip', id, of: 'card', way, widthMm: fit.heightMm };
    return { id, says, facts, worn: [strip] };
  }
  const lies = size && insidePiece(net, piece, size);
  const inside = lies ? { inside: lies } : {};
  const placed = size && placePiece(net, piece, size);
  if (!placed) {
    const says = kind === 'liner' ? 'Slide {name} in behind the contents.' : 'Add {name}.';
    return { id, says, facts, worn: [], ...inside };
  }
  const on = { ...facts, panel: { text: panelWords(placed.panel) } };
  if (placed.behind)
    return { id, says: 'Tape {name} behind the opening in the {panel}.', facts: on, worn: [], ...inside };
  const across = net.pieces.find((each) => each.id === placed.part)?.blank.across ?? 0;
  const box = {
    left: toMm(across - placed.left - placed.across),
    right: toMm(across - placed.left),
    bottom: toMm(placed.bottom),
    top: toMm(placed.bottom + placed.up),
  };
  const outline = labelOutline(box, placed.shape ?? 'rectangle');
  const patch: Worn = { kind: 'patch', id, part: placed.part, panel: placed.panel, outline };
  return { id, says: 'Stick {name} on the {panel}.', facts: on, worn: [patch] };
}

const TIE_SAYS = {
  cross: [
    'Lay {name} across the top, cross it below, and bring both ends up. Knot it on top.',
    'Lay {name} across the top, cross it below, and bring both ends up. Tie the bow on top.',
  ],
  over: [
    'Take {name} once around, under the bottom and up. Knot it on top.',
    'Take {name} once around, under the bottom and up. Tie the bow on top.',
  ],
  ring: [
    'Take {name} once around the walls. Knot it in front.',
    'Take {name} once around the walls. Tie the bow in front.',
  ],
  pull: [
    'Thread {name} through the pull, as the step card says.',
    'Thread {name} through the pull, as the step card says, and tie the bow on it.',
  ],
  none: ['Fix {name} on top.', 'Tie {name} as a bow and fix it on top.'],
} as const;

function stepOfTie({ id, name, wrap, bow }: Tie, widthMm: number): DressStep {
  const says = TIE_SAYS[wrap === 'over-front' || wrap === 'over-sides' ? 'over' : wrap][bow ? 1 : 0];
  const strips = ROUND[wrap].map((way): Worn => ({ kind: 'strip', id, of: 'ribbon', way, widthMm }));
  const on = wrap === 'ring' ? 'front' : 'top';
  const bows: readonly Worn[] = bow
    ? [{ kind: 'bow', id, on, loops: bow.loops, loopMm: bow.loopMm, tailMm: bow.tailMm, widthMm }]
    : [];
  return { id, says, facts: { name: { text: name } }, worn: [...strips, ...bows] };
}
