import { Download, Printer } from 'lucide-react';
import { useState } from 'react';
import { Button } from '../ui/fields/button';
import { ChoiceStrip } from '../ui/fields/choice-strip';
import { useRuler } from '../ui/fields/measure';
import { pageAddress, SHELF } from '../ui/frame/addresses';
import { type MadeFile, type PrinterPaper, usualPaper } from '../ui/frame/printer';
import { handOver } from '../ui/frame/save-as';
import { useWords } from '../ui/words';
import { commandMessages as own, printMessages as words } from './messages/commands';
import type { Printable } from './printables';
import { usePrintables } from './use-commands';
import { useWorkbookInSight } from './workbook-in-sight';
import './print-list.css';

const SAVED: ReadonlySet<Printable['name']> = new Set([
  'shoppingTable',
  'calendar',
  'handoutPage',
  'netSvg',
  'netDxf',
  'netFold',
]);

interface PrintListProps {
  readonly leaveFor: (address: string) => void;
}

/** Every document of what is open: what it is for, and one press to make it, or the way to what it still needs. */
export function PrintList({ leaveFor }: PrintListProps) {
  const { printing } = useWords();
  const open = useWorkbookInSight();
  const prints = usePrintables();
  const { unit } = useRuler();
  const [paper, setPaper] = useState<PrinterPaper>(usualPaper(unit));
  const [doing, setDoing] = useState<'making' | 'failed' | MadeFile | null>(null);
  if (!open)
    return (
      <>
        <p>{words.nothingOpen}</p>
        <Button tone="act" onClick={() => leaveFor(SHELF)}>
          {words.toShelf}
        </Button>
      </>
    );
  const make = async (print: NonNullable<Printable['make']>) => {
    setDoing('making');
    try {
      const made = await print(paper);
      if (made.lost?.length) {
        setDoing(made);
        return;
      }
      handOver(made);
      setDoing(null);
    } catch {
      setDoing('failed');
    }
  };
  const groups = [null, ...open.recipes]
    .map((recipe) => ({ recipe, rows: prints.filter((each) => each.recipe?.id === recipe?.id) }))
    .filter(({ rows }) => rows.length > 0);
  return (
    <>
      <div className="print-list-head">
        <p className="soft">{words.why}</p>
        <ChoiceStrip
          label={printing.paper}
          value={paper}
          choices={[
            { id: 'letter', label: printing.letter },
            { id: 'a4', label: printing.a4 },
          ]}
          onChange={setPaper}
        />
      </div>
      <p role="status" className={doing ? '' : 'said-only'}>
        {doing && (typeof doing === 'string' ? printing[doing] : printing.lost(doing.lost?.join(' ') ?? ''))}
        {doing && typeof doing !== 'string' && (
          <Button
            onClick={() => {
              handOver(doing);
              setDoing(null);
            }}
          >
            {printing.anyway}
          </Button>
        )}
      </p>
      {groups.map(({ recipe, rows }) => (
        <section key={recipe?.id ?? ''} className="print-group" aria-label={recipe?.name ?? words.event}>
          <h3>{recipe?.name ?? words.event}</h3>
          <ul>
            {rows.map(({ name, need, make: print }) => (
              <li key={name}>
                <div>
                  <b>{words.names[name]}</b>
                  <p className="soft">{words.purpose[name]}</p>
                </div>
                {print && (
                  <Button
                    aria-label={own.prints[name]}
                    aria-disabled={doing === 'making'}
                    icon={SAVED.has(name) ? <Download aria-hidden="true" /> : <Printer aria-hidden="true" />}
                    onClick={() => doing === 'making' || void make(print)}
                  >
                    {SAVED.has(name) ? words.save : words.title}
                  </Button>
                )}
                {need && (
                  <Button
                    tone="quiet"
                    className="print-need"
                    onClick={() => leaveFor(pageAddress(open.workbook, need.page, recipe?.id))}
                  >
                    {own.needs[need.what]}
                  </Button>
                )}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}
