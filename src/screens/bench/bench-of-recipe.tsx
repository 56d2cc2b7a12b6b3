import { useState } from 'react';
import { Link } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { benchOfRecipe } from '../../state/results/bench-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { useRuler } from '../../ui/fields/measure';
import { pageAddress } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import { classNames } from '../../ui/frame/class-names';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';
import { StepList } from '../../ui/frame/step-list';
import { usePageWords } from '../../ui/words';
import { BenchNet } from './bench-net';
import { OneStep } from './one-step';

type Way = 'one' | 'all';

interface BenchOfRecipeProps {
  readonly recipe: Recipe;
  readonly making: number | null;
  /** Seen by a learner, who changes and prints nothing. */
  readonly visiting?: boolean;
}

/** The step cards of one box. */
export function BenchOfRecipe({ recipe, making, visiting = false }: BenchOfRecipeProps) {
  const words = usePageWords().bench;
  const ruler = useRuler();
  const tool = useToolInHand();
  const [pieceId, setPieceId] = useState<string | null>(null);
  const [way, setWay] = useState<Way>('one');
  const [place, setPlace] = useState(0);
  const events = useWorkbook((state) => state.rows.events);
  const bench = benchOfRecipe(recipe, tool, ruler, events.values());
  const card = bench?.cards.find(({ piece }) => piece.id === pieceId) ?? bench?.cards[0];
  if (!bench || !card) return <BlankState title={words.noCard} />;
  if (bench.stops > 0)
    return (
      <BlankState
        title={words.mendFirst(bench.stops)}
        act={
          visiting ? undefined : (
            <Link className="button button-act" to={pageAddress({ kind: 'recipe', id: recipe.id }, 'box')}>
              {words.toBox}
            </Link>
          )
        }
      >
        <p>{words.mendFirstWhy}</p>
      </BlankState>
    );
  const step = Math.min(place, card.steps.length - 1);
  return (
    <div className={classNames('bench-page', way === 'all' && 'bench-page-list')}>
      <header className="bench-head">
        <div className="bench-choices screen-only">
          {bench.cards.length > 1 && (
            <ChoiceStrip
              label={words.piece}
              value={card.piece.id}
              choices={bench.cards.map(({ piece: { id, label } }) => ({ id, label }))}
              onChange={(id) => {
                setPieceId(id);
                setPlace(0);
              }}
            />
          )}
          <ChoiceStrip
            label={words.way}
            value={way}
            choices={[
              { id: 'one', label: words.oneByOne },
              { id: 'all', label: words.asList },
            ]}
            onChange={setWay}
          />
        </div>
        {making !== null && making > 0 && <p className="bench-making">{words.making(making, recipe.name)}</p>}
        {!visiting && <PrintCard recipe={recipe} />}
      </header>
      {way === 'one' ? (
        <OneStep card={card} place={step} onPlace={setPlace} />
      ) : (
        <>
          <StepList steps={card.steps} current={step} onStep={setPlace} />
          <BenchNet card={card} step={card.steps[step]} recipe={recipe} />
        </>
      )}
    </div>
  );
}

/** The card on paper, to lie beside the trimmer. */
function PrintCard({ recipe }: { recipe: Recipe }) {
  const words = usePageWords().bench;
  const printer = usePrinter();
  return (
    <PrintActs
      acts={[
        { label: words.printCard, make: (paper) => printer.benchCard(recipe, paper) },
        { label: words.printRoomy, make: (paper) => printer.benchCard(recipe, paper, 'roomy') },
      ]}
    />
  );
}
