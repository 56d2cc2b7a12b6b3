import { Gift, Layers, Package, PackagePlus, ShieldCheck } from 'lucide-react';
import { Link, useNavigate, useSearchParams } from 'react-router';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { KEEPING, pageAddress, SHELF_DOORS, type ShelfDoor, START, shelfAt } from '../../ui/frame/addresses';
import { useWords } from '../../ui/words';
import { Cupboard } from './cupboard';
import { EmptyShelf } from './empty-shelf';
import { FilesAndBin } from './files-and-bin';
import { MadeThings } from './made-things';
import './shelf.css';
import { nameOfRaw } from '../../state/keeping/as-it-is';

/** What have I got? Behind three doors: boxes and events; paper, supplies and tools; the way in and out for files. */
export function ShelfScreen({ exampleFailed }: { readonly exampleFailed: boolean }) {
  const words = useWords().shelf;
  const recipes = useWorkbook((state) => state.rows.recipes);
  const events = useWorkbook((state) => state.rows.events);
  const createEvent = useWorkbook((state) => state.createEvent);
  const navigate = useNavigate();
  const asked = useSearchParams()[0].get('door');
  const door = SHELF_DOORS.find((each) => each === asked) ?? 'made';
  const startEvent = () => {
    const made = createEvent({ name: words.newEventName });
    if (made.ok) void navigate(pageAddress({ kind: 'event', id: made.id }, 'event'));
  };

  const empty = recipes.size === 0 && events.size === 0;
  return (
    <main id="page" className="page page-sheet shelf" tabIndex={-1}>
      <KeepingNotice />
      {!empty && (
        <header className="shelf-head">
          <h1>{words.title}</h1>
          <Link className="button button-act" to={START}>
            <PackagePlus aria-hidden="true" />
            {words.newRecipe}
          </Link>
          <Button icon={<Gift aria-hidden="true" />} onClick={startEvent}>
            {words.newEvent}
          </Button>
        </header>
      )}
      {empty && door === 'made' && <EmptyShelf exampleFailed={exampleFailed} />}
      <Doors open={door} />
      {!empty && door === 'made' && <MadeThings />}
      {door === 'supplies' && <Cupboard />}
      {door === 'backup' && <FilesAndBin />}
    </main>
  );
}

const DOOR_ICONS = { made: Package, supplies: Layers, backup: ShieldCheck } as const;

/** The three doors of the shelf. */
function Doors({ open }: { readonly open: ShelfDoor }) {
  const words = useWords().shelf;
  return (
    <nav className="shelf-doors" aria-label={words.title}>
      {SHELF_DOORS.map((door) => {
        const Icon = DOOR_ICONS[door];
        return (
          <Link key={door} to={shelfAt(door)} aria-current={door === open ? 'page' : undefined}>
            <Icon aria-hidden="true" />
            <strong>{words.doors[door]}</strong> <span className="soft">{words.doorsHold[door]}</span>
          </Link>
        );
      })}
    </nav>
  );
}

/** What of safe keeping wants the maker's eye: things that were set aside, a folder that waits for them. Nothing, as a rule. */
function KeepingNotice() {
  const words = useWords().shelf;
  const aside = useWorkbook((state) => state.quarantined);
  const folder = useWorkbook((state) => state.folder);
  const waits = folder?.trouble ? folder.name : null;
  if (aside.length === 0 && waits === null) return null;
  return (
    <aside className="keeping-notice" aria-label={words.safeKeeping}>
      {aside.length > 0 && (
        <p>{words.setAside(aside.map(({ table, id, raw }) => ({ table, name: nameOfRaw(raw, id) })))}</p>
      )}
      {waits !== null && <p>{words.folderWaits(waits)}</p>}
      <Link className="button button-plain" to={KEEPING}>
        {words.lookAtIt}
      </Link>
    </aside>
  );
}
