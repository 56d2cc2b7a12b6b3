import { useState } from 'react';
import { Link, useOutletContext } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { benchOfRecipe } from '../../state/results/bench-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { useRuler } from '../../ui/fields/measure';
import { pageAddress, START } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import { classNames } from '../../ui/frame/class-names';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { StepList } from '../../ui/frame/step-list';
import { usePageWords } from '../../ui/words';
import { BenchNet } from './bench-net';
import { BenchOfEvent } from './bench-of-event';
import { OneStep } from './one-step';
import { PrintCard } from './print-card';
import './bench.css';

/** What do I do now? In an event the batch, counted; else the bench card of one piece, a step at a time or as a list, and on paper. */
export function BenchScreen() {
  const { workbook, recipe, event, plan, failed, again } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().bench;
  if (!recipe)
    return (
      <BlankState
        title={words.noRecipe}
        act={
          <Link
            className="button button-act"
            to={workbook.kind === 'event' ? pageAddress(workbook, 'event') : START}
          >
            {words.toRecipe}
          </Link>
        }
      />
    );
  const making = plan?.lines
    .filter(({ recipeId }) => recipeId === recipe.id)
    .reduce((sum, line) => sum + line.making, 0);
  const card = <BenchOfRecipe key={recipe.id} recipe={recipe} making={making ?? null} />;
  if (!event) return card;
  return <BenchOfEvent key={event.id} event={event} plan={plan} failed={failed} again={again} card={card} />;
}

type Way = 'one' | 'all';

function BenchOfRecipe({ recipe, making }: { recipe: Recipe; making: number | null }) {
  const words = usePageWords().bench;
  const ruler = useRuler();
  const tool = useToolInHand();
  const [pieceId, setPieceId] = useState<string | null>(null);
  const [way, setWay] = useState<Way>('one');
  const [place, setPlace] = useState(0);
  const bench = benchOfRecipe(recipe, tool, ruler);
  const card = bench?.cards.find(({ piece }) => piece.id === pieceId) ?? bench?.cards[0];
  if (!bench || !card) return <BlankState title={words.noCard} />;
  if (bench.stops > 0)
    return (
      <BlankState
        title={words.mendFirst(bench.stops)}
        act={
          <Link className="button button-act" to={pageAddress({ kind: 'recipe', id: recipe.id }, 'box')}>
            {words.toBox}
          </Link>
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
        <PrintCard recipe={recipe} />
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
