import type { BenchOp } from '../../bench';
import type { NetEdge, PieceNet, Point } from '../../net/types';
import type { At } from '../../plane';
import { toMm } from '../../units/ticks';
import { GLUE_LETTER, glueInk } from '../net/glue-areas';
import { UPRIGHT } from '../net/lying-piece';
import { linesOfNet } from '../net/net-lines';
import { type DrawnPanel, labelPanel, letterPanels } from '../net/panel-labels';
import { drawLine } from '../strokes/line-marks';
import { areaMark, type TextMark } from '../strokes/marks';
import { patchBehind } from '../strokes/text-stack';
import type { Mark } from '../strokes/types';
import type { StepPicture } from './flat-step';
import type { StepState } from './step-state';

/** The cut card laid flat, inside up as the net is drawn: which scores are folded, which panels are handled, where glue goes. */
export function drawClosingStep(piece: PieceNet, { acts }: StepState, picture: StepPicture): Mark[] {
  const { scale, textMm } = picture;
  const place = ({ x, y }: Point): At => [toMm(x) * scale, toMm(y) * scale];
  const work = handled(piece, acts);
  const isFolded = ({ kind, hinge, left }: NetEdge): boolean => {
    const panel = hinge === null ? piece.faces[left]?.panel : piece.hinges[hinge]?.panel;
    return kind === 'score' && panel !== undefined && work.folded.has(panel);
  };
  const quiet = linesOfNet({ ...piece, edges: piece.edges.filter((edge) => !isFolded(edge)) }, UPRIGHT);
  const loud = linesOfNet({ ...piece, edges: piece.edges.filter(isFolded) }, UPRIGHT);
  const tabs = piece.joints.flatMap(({ tab, lap }) => {
    const face = piece.faces[tab];
    return face && work.glued.has(face.panel) ? [{ ...face, ink: glueInk(lap, 'inside') }] : [];
  });
  const glueOn = new Map(tabs.map(({ panel, ink }) => [panel, GLUE_LETTER[ink]]));
  const labels = letterPanels(piece)
    .filter(({ panel }) => work.panels.has(panel))
    .flatMap((panel) => labelled(panel, place, textMm, glueOn.get(panel.panel) ?? null));
  return [
    ...piece.faces.map(({ ring, holes }) =>
      areaMark(
        'paper',
        ring.map(place),
        undefined,
        holes.map((hole) => hole.map(place)),
      ),
    ),
    ...tabs.map(({ ring, ink }) => areaMark(ink, ring.map(place))),
    ...labels,
    ...quiet.flatMap((line) =>
      drawLine(line, scale).map((mark) => ({ ...mark, ink: QUIET[line.ink] ?? line.ink }) as Mark),
    ),
    ...loud.flatMap((line) => drawLine(line, scale)),
  ];
}

/** Lines that this step does not work: the outline is only the card's edge now, and other scores only guide the eye. */
const QUIET: Readonly<Record<string, 'edge' | 'guide'>> = {
  cut: 'edge',
  'score-valley': 'guide',
  'score-mountain': 'guide',
  'score-flat': 'guide',
};

interface Handled {
  readonly panels: ReadonlySet<string>;
  readonly folded: ReadonlySet<string>;
  readonly glued: ReadonlySet<string>;
}

function handled({ faces }: PieceNet, acts: readonly BenchOp[]): Handled {
  const creased = acts.some(({ op }) => op === 'crease') ? faces.map(({ panel }) => panel) : [];
  const folded = [...creased, ...acts.flatMap((op) => (op.op === 'close' ? op.panels : []))];
  const glued = acts.flatMap((op) => (op.op === 'glue' || op.op === 'stick' ? [op.panel] : []));
  const threaded = acts.flatMap((op) => (op.op === 'thread' ? [op.panel] : []));
  const onto = acts.flatMap((op) => (op.op === 'glue' ? [op.onto] : []));
  return {
    panels: new Set([...folded, ...glued, ...onto, ...threaded]),
    folded: new Set(folded),
    glued: new Set(glued),
  };
}

function labelled(
  panel: DrawnPanel,
  place: (point: Point) => At,
  textMm: number,
  glueLetter: string | null,
): readonly Mark[] {
  const rings = panel.faces.map((face) => face.ring.map(place));
  const labels: readonly TextMark[] = labelPanel(panel, rings, textMm, true, glueLetter);
  return glueLetter === null
    ? labels
    : [...labels.map((label) => areaMark('paper', patchBehind(label))), ...labels];
}
