import { ArrowLeft, ArrowRight } from 'lucide-react';
import { type KeyboardEvent, useId, useMemo, useState } from 'react';
import type { NamedPart } from '../../core/draw/sheet/sheet-drawing';
import {
  type CutPiece,
  type CuttingTool,
  type Layout,
  type SheetPaper,
  sequenceCuts,
} from '../../core/yield';
import { cutName } from '../../print';
import { CutView } from '../../ui/drawing/cut-view';
import { Button } from '../../ui/fields/button';
import { lengthWords, sizeWords, useRuler } from '../../ui/fields/measure';
import { keyIn } from '../../ui/frame/keys';
import { usePageWords } from '../../ui/words';

interface CutStepperProps {
  readonly layout: Layout;
  readonly sheet: SheetPaper;
  readonly tool: CuttingTool;
  readonly parts: readonly NamedPart[];
}

/** The cuts of one layout, one at a time: the picture, the fence setting, what is kept and what falls off. Arrow keys step. */
export function CutStepper({ layout, sheet, tool, parts }: CutStepperProps) {
  const words = usePageWords().sheets;
  const ruler = useRuler();
  const name = useId();
  const sequence = useMemo(() => sequenceCuts(layout, sheet, tool), [layout, sheet, tool]);
  const [wanted, setWanted] = useState(0);
  const last = sequence.steps.length - 1;
  const at = Math.min(wanted, last);
  const step = sequence.steps[at];
  if (step === undefined) return null;

  const move = (by: number) => setWanted(Math.max(0, Math.min(last, at + by)));
  const onKeyDown = (event: KeyboardEvent) => {
    const [act, nth] = keyIn('cuts', event) ?? [];
    if (act === undefined) return;
    event.preventDefault();
    move((nth === 0 ? -1 : 1) * (act === 'ends' ? last : 1));
  };
  const pieceWords = (piece: CutPiece) => {
    const part = parts.find(({ id }) => id === piece.part);
    if (part) return `${part.mark} ${part.name}`;
    const size = sizeWords([piece.across, piece.up], ruler);
    return `${piece.is === 'offcut' ? words.offcut : words.cutOn}, ${size}`;
  };
  const [strokes, fences] = [sequence.strokes, sequence.fences.length];
  return (
    <section className="cut-stepper" aria-labelledby={name} onKeyDown={onKeyDown}>
      <h4 id={name}>{words.stepper}</h4>
      <p className="soft">{words.pace(strokes, sequence.rounds, sequence.stack, fences, sequence.turns)}</p>
      <CutView sequence={sequence} at={at} paper={sheet} parts={parts} />
      <div className="cut-step-words" role="status">
        <p>
          <strong>{words.step(cutName(sequence, at), cutName(sequence, last))}</strong>
        </p>
        {step.why === 'square' && <p>{words.squareStep}</p>}
        {step.turn && <p>{words.turnFirst}</p>}
        <p className="cut-fence">{words.fence(lengthWords(step.fence, ruler))}</p>
        <p>{words.becomes(pieceWords(step.keep), pieceWords(step.other))}</p>
      </div>
      <div className="cut-step-acts screen-only">
        <Button icon={<ArrowLeft aria-hidden="true" />} aria-disabled={at === 0} onClick={() => move(-1)}>
          {words.back}
        </Button>
        <Button icon={<ArrowRight aria-hidden="true" />} aria-disabled={at === last} onClick={() => move(1)}>
          {words.next}
        </Button>
      </div>
    </section>
  );
}
