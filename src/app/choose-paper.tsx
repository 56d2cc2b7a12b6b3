import { type FormEvent, useState } from 'react';
import { readPaper } from '../../shared/read-paper';
import type { FavorEvent, Paper } from '../../shared/workbook';
import type { EventPlan } from '../core/plan';
import type { Content } from '../state/intents/first-rows';
import { ownOf } from '../state/shelf';
import { useWorkbook } from '../state/use-workbook';
import { Button } from '../ui/fields/button';
import { useRuler } from '../ui/fields/measure';
import { PaperLabelField } from '../ui/fields/paper-label-field';
import { SelectField } from '../ui/fields/text-field';
import { usePageWords } from '../ui/words';
import './choose-paper.css';

const NONE = '';

/** Whether some box of the event is cut from no paper that is the maker’s. */
export const lacksPaper = (plan: EventPlan | null): boolean =>
  plan?.findings.some(({ code }) => code === 'paper-missing') ?? false;

/** Where a box has no paper: choose one of the maker’s, or type a new one in place. Sheets and cost follow. */
export function ChoosePaper({ event, plan }: { event: FavorEvent; plan: EventPlan }) {
  const { frame, choosePaper: words } = usePageWords();
  const { unit } = useRuler();
  const papers = useWorkbook((state) => state.rows.papers);
  const createTogether = useWorkbook((state) => state.createTogether);
  const edit = useWorkbook((state) => state.edit);
  const [text, setText] = useState('');
  const own = ownOf(papers);
  const heard = readPaper(text, unit);
  const [unread, setUnread] = useState(false);
  const lacking = plan.lines.filter(({ paperId }) => !own.some(({ id }) => id === paperId));
  const cutFrom = (paperId: string) =>
    edit('events', event.id, frame.choosePaper, (before) => ({
      ...before,
      lines: before.lines.map((line) =>
        lacking.some(({ lineId }) => lineId === line.id) ? { ...line, paperId } : line,
      ),
    }));
  const add = (submitted: FormEvent) => {
    submitted.preventDefault();
    setUnread(heard === null);
    if (heard === null) return;
    const content: Content<'papers'> = {
      ...heard.paper,
      grain: 'none',
      squaringMm: { left: 0, right: 0, near: 0, far: 0 },
      onHandSheets: 0,
    };
    const made = createTogether(words.other, [{ table: 'papers', content: () => content }]);
    if (made.ok && made.ids[0] !== undefined) cutFrom(made.ids[0]);
  };
  return (
    <section className="choose-paper screen-only" aria-label={frame.choosePaper}>
      <p>
        <strong>{frame.choosePaper}.</strong> {words.why}
      </p>
      {own.length > 0 && (
        <SelectField
          label={words.yours}
          value={NONE}
          choices={[
            { id: NONE, label: frame.choosePaper },
            ...own.map(({ id, name }: Paper) => ({ id, label: name })),
          ]}
          onChange={(id) => id !== NONE && cutFrom(id)}
        />
      )}
      <form onSubmit={add}>
        <PaperLabelField
          label={words.other}
          words={words}
          currency={event.currency}
          text={text}
          refuses={unread}
          onText={(typed) => {
            setText(typed);
            setUnread(false);
          }}
        />
        <Button tone="act" type="submit">
          {words.useIt}
        </Button>
      </form>
    </section>
  );
}
