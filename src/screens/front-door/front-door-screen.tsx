import { useDeferredValue, useMemo, useState } from 'react';
import { Link, useSearchParams } from 'react-router';
import type { Paper, Tool } from '../../../shared/workbook';
import { RANKS, type Rank, rankAnswers } from '../../core/answers';
import type { StyleMerit } from '../../core/plan/event/style-facts';
import { type AnswersAsk, useAnswers } from '../../state/results/fit-result';
import { useStylesAtHand } from '../../state/results/styles-at-hand';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { useRuler } from '../../ui/fields/measure';
import { NEW_RECIPE } from '../../ui/frame/addresses';
import { useFrontDoorWords } from '../../ui/words/front-door-words';
import { AnswerTiles } from './answer-tiles';
import { contentsOf, type DoorDraft, paperOf, toolOf, useDoorDraft, useSteady } from './door-draft';
import { FIRST_SPARES, useMakeAnswer } from './make-answer';
import { QuestionsForm } from './questions-form';
import './front-door.css';
import '../../ui/folded/style-tiles.css';

const MERITS: readonly StyleMerit[] = ['lid', 'tall', 'flat-packet', 'no-glue', 'trimmer-only', 'one-sheet'];
const STAMP = { id: 'not-kept', rev: 0, createdAt: '', changedAt: '' };

/** What goes in, how many, which paper, which tool: and the boxes for it, best first. */
export function FrontDoorScreen() {
  const words = useFrontDoorWords();
  const paperRows = useWorkbook((state) => state.rows.papers);
  const toolRows = useWorkbook((state) => state.rows.tools);
  const { draft, put } = useDoorDraft();
  const [rank, setRank] = useState<Rank>('easiest');
  const [must, setMust] = useState<readonly StyleMerit[]>([]);
  const [search] = useSearchParams();
  const currency = useWorkbook((state) => state.settings.currency);
  const make = useMakeAnswer();
  const papers = useMemo(() => ownOf(paperRows), [paperRows]);
  const tools = useMemo(() => ownOf(toolRows), [toolRows]);

  const { contents, paper, tool, asked } = useAsking(draft, papers, tools, currency);
  const question = useSteady(useDeferredValue(asked));
  const { found, stale, done, of, stop } = useAnswers(question);
  const ranked = useMemo(
    () => rankAnswers(found, rank).filter(({ merits }) => must.every((merit) => merits.includes(merit))),
    [found, rank, must],
  );
  const event = search.get('event');

  return (
    <main id="page" className="page page-sheet front-door" tabIndex={-1}>
      <header className="door-head">
        <h1>{words.title}</h1>
        <p>{words.why}</p>
        <Link
          className="button button-plain"
          to={event === null ? NEW_RECIPE : `${NEW_RECIPE}?event=${event}`}
        >
          {words.knowShape}
        </Link>
      </header>
      <QuestionsForm draft={draft} put={put} papers={papers} tools={tools} currency={currency} />
      <section className="door-answers" aria-labelledby="door-answers">
        <h2 id="door-answers">{words.answers}</h2>
        <ChoiceStrip
          named
          label={words.matters}
          value={rank}
          choices={RANKS.map((id) => ({ id, label: words.ranks[id] }))}
          onChange={setRank}
        />
        <MustHave must={must} setMust={setMust} />
        <div className="door-progress">
          <p role="status">
            {!contents
              ? words.needsSize
              : !paper
                ? words.needsPaper
                : done < of || ranked.length > 0
                  ? words.found(ranked.length, done, of)
                  : must.length > 0
                    ? words.nothingFiltered
                    : words.nothing}
          </p>
          {question && done < of && (
            <Button tone="quiet" onClick={stop}>
              {words.stop}
            </Button>
          )}
        </div>
        {question && paper && (
          <AnswerTiles
            answers={ranked}
            question={question}
            stale={stale}
            onMake={(answer, name) => make(answer, question, { paper, tool }, name)}
          />
        )}
      </section>
    </main>
  );
}

/** What the answers so far come to, and the question they make once there is something to go in and a sheet. */
function useAsking(draft: DoorDraft, papers: readonly Paper[], tools: readonly Tool[], currency: string) {
  const words = useFrontDoorWords();
  const { unit } = useRuler();
  const { texts } = useStylesAtHand();
  const contents = contentsOf(draft, unit, words.plainGoods);
  const paper = paperOf(draft, papers, unit, ({ sheet, gsm }) => words.sold(sheet.name, gsm));
  const tool = toolOf(draft, tools, unit, words.tools);
  const asked: AnswersAsk | null =
    contents && paper
      ? {
          contents,
          favors: draft.favors,
          spares: FIRST_SPARES,
          paper: 'id' in paper ? paper : { ...STAMP, ...paper },
          tool: tool === null ? undefined : 'id' in tool ? tool : { ...STAMP, ...tool },
          unit,
          currency,
          ...(texts.length === 0 ? {} : { ownStyles: texts }),
        }
      : null;
  return { contents, paper, tool, asked };
}

interface MustHaveProps {
  readonly must: readonly StyleMerit[];
  readonly setMust: (must: readonly StyleMerit[]) => void;
}

/** What every box shown must be or have. */
function MustHave({ must, setMust }: MustHaveProps) {
  const words = useFrontDoorWords();
  return (
    <fieldset className="door-must">
      <legend>{words.must}</legend>
      {MERITS.map((merit) => (
        <label key={merit} className="wish">
          <input
            type="checkbox"
            checked={must.includes(merit)}
            onChange={() =>
              setMust(must.includes(merit) ? must.filter((one) => one !== merit) : [...must, merit])
            }
          />
          {words.merits[merit]}
        </label>
      ))}
    </fieldset>
  );
}
