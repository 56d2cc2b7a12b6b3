import { Download, Printer } from 'lucide-react';
import { Button } from '../ui/fields/button';
import { pageAddress, SHELF } from '../ui/frame/addresses';
import { MakingState, PaperChoice, useMaking } from '../ui/frame/making';
import { commandMessages as own, printMessages as words } from '../ui/words/english/commands';
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
  'styleFile',
]);

interface PrintListProps {
  readonly leaveFor: (address: string) => void;
}

/** Every document of what is open: what it is for, and one press to make it, or the way to what it still needs. */
export function PrintList({ leaveFor }: PrintListProps) {
  const open = useWorkbookInSight();
  const prints = usePrintables();
  const { paper, setPaper, doing, setDoing, make, making } = useMaking();
  if (!open)
    return (
      <>
        <p>{words.nothingOpen}</p>
        <Button tone="act" onClick={() => leaveFor(SHELF)}>
          {words.toShelf}
        </Button>
      </>
    );
  const groups = [null, ...open.recipes]
    .map((recipe) => ({ recipe, rows: prints.filter((each) => each.recipe?.id === recipe?.id) }))
    .filter(({ rows }) => rows.length > 0);
  return (
    <>
      <div className="print-list-head">
        <p className="soft">{words.why}</p>
        <PaperChoice paper={paper} setPaper={setPaper} />
      </div>
      <MakingState doing={doing} setDoing={setDoing} />
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
                    aria-disabled={making}
                    icon={SAVED.has(name) ? <Download aria-hidden="true" /> : <Printer aria-hidden="true" />}
                    onClick={() => making || void make(print)}
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
