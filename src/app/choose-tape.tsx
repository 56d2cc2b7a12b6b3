import { type FormEvent, useState } from 'react';
import { readTape } from '../../shared/read-tape';
import type { FavorEvent } from '../../shared/workbook';
import { type EventPlan, printMoney } from '../core/plan';
import { ticksOfMm } from '../core/rows/lengths';
import type { Content } from '../state/intents/first-rows';
import { ownOf } from '../state/shelf';
import { useWorkbook } from '../state/use-workbook';
import { Button } from '../ui/fields/button';
import { lengthWords, useRuler } from '../ui/fields/measure';
import { SelectField, TextField } from '../ui/fields/text-field';
import { usePageWords } from '../ui/words';
import './choose-paper.css';

const NONE = '';
/** Of every roll, what is lost to trimmed ends and false starts. source: common practice, no source */
const WASTE_PERCENT = 5;

/** Whether the boxes of the event are taped and no tape is chosen. */
export const lacksTape = (plan: EventPlan | null): boolean =>
  plan?.findings.some(({ code }) => code === 'tape-missing') ?? false;

/** Where taped boxes have no tape: choose one of the maker’s, or type a new roll in place. It is then counted and bought. */
export function ChooseTape({ event }: { event: FavorEvent }) {
  const { locale, chooseTape: words } = usePageWords();
  const ruler = useRuler();
  const supplies = useWorkbook((state) => state.rows.supplies);
  const createTogether = useWorkbook((state) => state.createTogether);
  const edit = useWorkbook((state) => state.edit);
  const [text, setText] = useState('');
  const [refused, setRefused] = useState(false);
  const own = ownOf(supplies).filter(({ kind }) => kind === 'tape');
  const heard = readTape(text, ruler.unit);
  const holdWith = (tapeId: string) =>
    edit('events', event.id, words.head, (before) => ({ ...before, tapeId }));
  const add = (submitted: FormEvent) => {
    submitted.preventDefault();
    setRefused(heard === null);
    if (heard === null) return;
    const content: Content<'supplies'> = {
      ...heard,
      kind: 'tape',
      name: words.named(lengthWords(ticksOfMm(heard.widthMm), ruler)),
      onHandRolls: 0,
      wastePercent: WASTE_PERCENT,
    };
    const made = createTogether(words.other, [{ table: 'supplies', content: () => content }]);
    if (made.ok && made.ids[0] !== undefined) holdWith(made.ids[0]);
  };
  return (
    <section className="choose-paper screen-only" aria-label={words.head}>
      <p>
        <strong>{words.head}.</strong> {words.why}
      </p>
      {own.length > 0 && (
        <SelectField
          label={words.yours}
          value={NONE}
          choices={[{ id: NONE, label: words.head }, ...own.map(({ id, name }) => ({ id, label: name }))]}
          onChange={(id) => id !== NONE && holdWith(id)}
        />
      )}
      <form onSubmit={add}>
        <TextField
          label={words.other}
          value={text}
          help={
            <p className={refused && heard === null ? 'field-refused' : undefined}>
              {heard
                ? words.read({
                    width: lengthWords(ticksOfMm(heard.widthMm), ruler),
                    meters: heard.rollMm / 1000,
                    price: heard.priceMinor > 0 ? printMoney(heard.priceMinor, event.currency, locale) : null,
                  })
                : refused
                  ? words.noRoll
                  : words.help}
            </p>
          }
          onChange={(typed) => {
            setText(typed);
            setRefused(false);
          }}
        />
        <Button tone="act" type="submit">
          {words.useIt}
        </Button>
      </form>
    </section>
  );
}
