import { useMemo } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { panelWords } from '../../core/checks/finding';
import { setFractions } from '../../core/draw/strokes/set-fractions';
import type { PieceNet } from '../../core/net';
import { benchOfRecipe } from '../../state/results/bench-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useRuler } from '../../ui/fields/measure';
import { classNames } from '../../ui/frame/class-names';
import { usePageWords, useSay } from '../../ui/words';

/** A sentence of the card, and how many acts are done once it is done. */
export interface FoldStep {
  readonly says: string;
  readonly done: number;
}

/** The closing steps of the card; where the card cannot be written, the acts by their panels. */
export function useFoldSteps(recipe: Recipe, piece: PieceNet): readonly FoldStep[] {
  const ruler = useRuler();
  const tool = useToolInHand();
  const words = usePageWords().fold;
  const say = useSay();
  return useMemo(() => {
    const bench = benchOfRecipe(recipe, tool, ruler);
    const card = bench?.cards.find((each) => each.piece === piece);
    const first: FoldStep = { says: words.flat, done: 0 };
    if (!card)
      return [
        first,
        ...piece.closing.map((act, at) => ({
          says: words.act(
            (act.do === 'glue' ? [tabOf(piece, act.joint)] : act.panels)
              .map((panel) => say(panelWords(panel)))
              .join(', '),
          ),
          done: at + 1,
        })),
      ];
    const isClosing = (at: number) => ['glue', 'close'].includes(card.program.ops[at]?.op ?? '');
    const before = (to: number) => card.program.ops.slice(0, to).filter((_, at) => isClosing(at)).length;
    return [
      first,
      ...card.steps
        .filter(({ kind }) => kind === 'glue' || kind === 'close')
        .map(({ headline, ops }) => ({ says: say(headline), done: before(ops.to) })),
    ];
  }, [recipe, piece, tool, ruler, words, say]);
}

const tabOf = (piece: PieceNet, joint: number): string =>
  piece.faces[piece.joints[joint]?.tab ?? -1]?.panel ?? '';

interface ActListProps {
  readonly steps: readonly FoldStep[];
  readonly done: number;
  readonly onDone: (done: number) => void;
}

/** Every step, to be gone to at a press; the one in hand stands out. */
export function ActList({ steps, done, onDone }: ActListProps) {
  const current = steps.findIndex((step) => done <= step.done);
  return (
    <ol className="fold-acts">
      {steps.map((step, at) => (
        <li key={step.done}>
          <button
            type="button"
            className={classNames('fold-act', at === current && 'fold-act-now')}
            aria-current={at === current ? 'step' : undefined}
            onClick={() => onDone(step.done)}
          >
            {setFractions(step.says)}
          </button>
        </li>
      ))}
    </ol>
  );
}
