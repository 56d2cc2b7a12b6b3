import { useCallback, useState } from 'react';
import type { Keeping } from '../../state/keeping/keeping';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { useAnswer } from './use-keeping';

/** What the browser promises, how much room is used, and what lies here. */
export function WhereKept({ keeping }: { keeping: Keeping }) {
  const words = useKeepingWords();
  const keeps = useWorkbook((state) => state.keeps);
  const rows = useWorkbook((state) => state.rows);
  const [asked, setAsked] = useState(0);
  const facts = useAnswer(keeping.facts, asked);
  const earlier = useAnswer(useCallback(() => keeping.listEarlier(), [keeping]));
  const states = earlier?.ok ? earlier.value : null;
  const ask = async () => {
    await keeping.askToPersist();
    setAsked(asked + 1);
  };
  return (
    <section aria-labelledby="keeping-here">
      <h2 id="keeping-here">{words.here}</h2>
      {keeps === 'memory' && <p role="alert">{words.inMemory}</p>}
      <dl className="keeping-facts">
        <div>
          <dt>{words.promise}</dt>
          <dd>
            <div role="status">
              {facts && (
                <p>
                  {facts.persisted === null
                    ? words.promiseUnknown
                    : facts.persisted
                      ? words.promised
                      : asked > 0
                        ? words.askedInVain
                        : words.notPromised}
                </p>
              )}
              {facts?.persisted === false && asked === 0 && (
                <Button onClick={() => void ask()}>{words.askPromise}</Button>
              )}
            </div>
          </dd>
        </div>
        <div>
          <dt>{words.room}</dt>
          <dd>
            {facts &&
              (facts.usedBytes === null
                ? words.roomUnknown
                : words.roomUsed(facts.usedBytes, facts.roomBytes))}
          </dd>
        </div>
        <div>
          <dt>{words.onShelf}</dt>
          <dd>
            {words.counts({
              recipes: rows.recipes.size,
              events: rows.events.size,
              papers: rows.papers.size,
              supplies: rows.supplies.size,
              tools: rows.tools.size,
              photos: rows.photos.size,
            })}
          </dd>
        </div>
        <div>
          <dt>{words.earlierKept}</dt>
          <dd>{states && words.statesOf(states.length, new Set(states.map(({ of }) => of)).size)}</dd>
        </div>
      </dl>
    </section>
  );
}
