import { useMemo } from 'react';
import { type Answer, type AnswersQuestion, recipeOfAnswer, rulerOfQuestion } from '../../core/answers';
import { type NeededRoom, neededRooms } from '../../core/fit';
import { netOfRecipe, printMoney } from '../../core/plan';
import { styleById } from '../../core/styles';
import { MARK_STEPS } from '../../core/units';
import { Button } from '../../ui/fields/button';
import { lengthWords } from '../../ui/fields/measure';
import { FoldedPicture } from '../../ui/folded/folded-picture';
import { useSay, useWords } from '../../ui/words';
import { useFrontDoorWords } from '../../ui/words/front-door-words';

interface AnswerTilesProps {
  readonly answers: readonly Answer[];
  readonly question: AnswersQuestion;
  readonly stale: boolean;
  readonly onMake: (answer: Answer, name: string) => void;
}

/** Boxes that can be made, best first: each with what lies in it, and what it takes. */
export function AnswerTiles({ answers, question, stale, onMake }: AnswerTilesProps) {
  const rooms = useMemo(() => neededRooms(question.contents), [question.contents]);
  return (
    <ol className="answers" aria-busy={stale} data-stale={stale || undefined}>
      {answers.map((answer) => (
        <AnswerTile
          key={answer.styleId}
          answer={answer}
          question={question}
          room={rooms[answer.arrangement]}
          onMake={(name) => onMake(answer, name)}
        />
      ))}
    </ol>
  );
}

interface AnswerTileProps {
  readonly answer: Answer;
  readonly question: AnswersQuestion;
  readonly room: NeededRoom | undefined;
  readonly onMake: (name: string) => void;
}

function AnswerTile({ answer, question, room, onMake }: AnswerTileProps) {
  const words = useFrontDoorWords();
  const { locale } = useWords();
  const say = useSay();
  const style = styleById(answer.styleId);
  const net = useMemo(
    () =>
      netOfRecipe({
        ...recipeOfAnswer(answer, question),
        id: 'answer',
        rev: 0,
        createdAt: '',
        changedAt: '',
        name: '',
        paperId: null,
        faceUp: 'inside',
        dressings: [],
        notes: '',
      }),
    [answer, question],
  );
  if (!style || !net) return null;
  const name = say(style.name);
  const ruler = rulerOfQuestion(question);
  const finest = MARK_STEPS[ruler.unit][answer.row.hardest] ?? ruler.finest;
  const { boxesPerSheet, loose } = answer.row;
  const facts = [
    words.sheets(answer.sheets.count, answer.sheets.atLeast),
    ...(boxesPerSheet !== null && boxesPerSheet > 1 ? [words.perSheet(boxesPerSheet)] : []),
    answer.costMinor === null
      ? words.noPrice
      : words.cost(printMoney(answer.costMinor, question.currency, locale)),
    words.minutes(Math.round(answer.minutes)),
    words.finest(lengthWords(finest, ruler)),
    words.fits(lengthWords(loose, ruler)),
  ];
  return (
    <li className="answer">
      <span className="style-picture">
        <FoldedPicture net={net} colour={question.paper.colour} holds={room?.arrangement} />
      </span>
      <div className="answer-words">
        <h3>{name}</h3>
        <p>
          {words.closings[answer.closing]}, {words.glued(answer.glued)}
        </p>
        <ul className="answer-facts">
          {facts.map((fact) => (
            <li key={fact}>{fact}</li>
          ))}
        </ul>
        <p className="soft">
          {words.watch}: {say(style.watchOut)}
        </p>
        <Button tone="act" onClick={() => onMake(name)}>
          {words.make}
          <span className="said-only">: {name}</span>
        </Button>
      </div>
    </li>
  );
}
