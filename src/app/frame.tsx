import {
  CircleHelp,
  Contrast,
  Moon,
  Printer,
  Redo2,
  Search,
  SlidersHorizontal,
  Sun,
  SunMoon,
  Undo2,
} from 'lucide-react';
import { lazy, type ReactNode, Suspense, useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { Link, NavigationType, Outlet, useLocation, useNavigationType } from 'react-router';
import { useWorkbook } from '../state/use-workbook';
import { Button, IconButton } from '../ui/fields/button';
import { ChoiceStrip } from '../ui/fields/choice-strip';
import { HELP, SHELF, workbookAt } from '../ui/frame/addresses';
import { SaveState } from '../ui/frame/save-state';
import type { ShelfDoors } from '../ui/frame/shelf-doors';
import { useWords } from '../ui/words';
import { useAsked } from './asked';
import { Boundary, Part } from './boundary';
import { Notices } from './notices';
import { useOpenExample } from './open-example';
import { PageBroken } from './page-broken';
import { usePageTitle } from './page-title';
import { workbookName } from './pages';
import { PageOpening, PhaseGate } from './phase-gate';
import { useTheme } from './theme';
import './frame.css';

const Shortcuts = lazy(async () => ({ default: (await import('./shortcuts')).Shortcuts }));
const CommandList = lazy(async () => ({ default: (await import('./command-list')).CommandList }));

const NEXT_THEME = { system: 'light', light: 'dark', dark: 'contrast', contrast: 'system' } as const;
const THEME_ICONS = { system: SunMoon, light: Sun, dark: Moon, contrast: Contrast } as const;

/** What stands round every page: the way back to the shelf, whether the work is kept, undo and redo, the unit and the light. */
export function Frame() {
  const {
    frame: words,
    shelf: { title: shelf },
  } = useWords();
  const { pathname } = useLocation();
  const named = workbookAt(pathname);
  const openExample = useOpenExample();
  const doors = useMemo((): ShelfDoors => ({ openExample }), [openExample]);
  const step = useAsked();
  const { asked, ask, close, leaveFor } = step;
  useTheme();
  usePageTitle();
  return (
    <div className="frame">
      <BeginAtTop key={pathname} />
      <button type="button" className="frame-skip" onClick={() => document.getElementById('page')?.focus()}>
        {words.toPage}
      </button>
      <header className="frame-bar screen-only">
        <Link
          to={SHELF}
          className="frame-mark"
          title={words.toShelf}
          aria-label={`${words.product}. ${words.toShelf}`}
        >
          <Mark />
          <span>{pathname === SHELF ? words.product : shelf}</span>
        </Link>
        <Part key={named?.id} fallback={<span className="frame-space" />}>
          {named ? <workbookName.Page kind={named.kind} id={named.id} /> : <span className="frame-space" />}
        </Part>
        <SaveStateOfWorkbook />
        <UndoRedo />
        <Button
          tone="quiet"
          className="frame-print"
          icon={<Printer aria-hidden="true" />}
          onClick={() => ask('prints')}
        >
          <span>{words.print}</span>
        </Button>
        <Preferences step={step} />
      </header>
      <PhaseGate>
        <Boundary resetBy={pathname} instead={({ message }) => <PageBroken detail={message} />}>
          <Suspense fallback={<PageOpening />}>
            <Outlet context={doors} />
          </Suspense>
        </Boundary>
      </PhaseGate>
      <Notices />
      <Part>
        <Shortcuts ask={ask} />
      </Part>
      {asked && (
        <Part key={asked}>
          <CommandList asked={asked} ask={ask} onClose={close} leaveFor={leaveFor} />
        </Part>
      )}
    </div>
  );
}

/** A page that is turned to begins at its top; the way back leads to where one was. */
function BeginAtTop(): null {
  const came = useNavigationType();
  useLayoutEffect(() => {
    if (came !== NavigationType.Pop) document.documentElement.scrollTop = 0;
  }, [came]);
  return null;
}

function SaveStateOfWorkbook() {
  const save = useWorkbook((state) => state.save);
  const keeps = useWorkbook((state) => state.keeps);
  const phase = useWorkbook((state) => state.phase.phase);
  const faults = useWords().faults;
  // Before anything was read, nothing is known of what is kept.
  if (phase === 'opening' || phase === 'blocked') return null;
  if (save.state === 'not-saved') return <SaveState state="not-saved" detail={faults[save.why]} />;
  return <SaveState state={keeps === 'memory' ? 'memory-only' : save.state} />;
}

function UndoRedo() {
  const words = useWords().frame;
  const { done, undone } = useWorkbook((state) => state.history);
  const undo = useWorkbook((state) => state.undo);
  const redo = useWorkbook((state) => state.redo);
  const named = (verb: string, step: string | undefined) => (step === undefined ? verb : `${verb}: ${step}`);
  return (
    <div className="frame-group">
      <IconButton
        label={named(words.undo, done.at(-1)?.label)}
        icon={<Undo2 />}
        disabled={done.length === 0}
        onClick={undo}
      />
      <IconButton
        className="frame-redo"
        label={named(words.redo, undone.at(-1)?.label)}
        icon={<Redo2 />}
        disabled={undone.length === 0}
        onClick={redo}
      />
    </div>
  );
}

/** Whether the browser is at that step still: a press on a link beside the settings closes them and leads on, before the new page is drawn. */
const isAtPreferences = () =>
  (window.history.state as { usr: { asked?: unknown } | null } | null)?.usr?.asked === 'preferences';

function Preferences({ step }: { step: ReturnType<typeof useAsked> }) {
  const popover = useRef<HTMLDivElement>(null);
  const shown = useRef(false);
  // Back takes the step away, and the settings go with it; a step one comes back to without them is passed over.
  useEffect(() => {
    if (step.preferences && !shown.current) step.close();
    if (!step.preferences && shown.current) popover.current?.hidePopover();
  });
  const words = useWords().frame;
  const { unit, theme } = useWorkbook((state) => state.settings);
  const change = useWorkbook((state) => state.changeSettings);
  const ThemeIcon = THEME_ICONS[theme];
  return (
    <>
      <IconButton
        className="frame-more"
        label={words.preferences}
        icon={<SlidersHorizontal />}
        popoverTarget="preferences"
      />
      <div
        ref={popover}
        id="preferences"
        popover="auto"
        className="frame-group frame-preferences"
        onToggle={({ newState }) => {
          shown.current = newState === 'open';
          if (shown.current) step.ask('preferences');
          else if (step.preferences && isAtPreferences()) step.close();
        }}
      >
        <ChoiceStrip
          label={words.unit}
          value={unit}
          choices={[
            { id: 'in', label: words.inches, face: 'in' },
            { id: 'mm', label: words.millimetres, face: 'mm' },
          ]}
          onChange={(next) => change({ unit: next })}
        />
        <IconButton
          label={`${words.theme}: ${words[theme]}`}
          icon={<ThemeIcon />}
          onClick={() => change({ theme: NEXT_THEME[theme] })}
        />
        <IconButton label={words.find} icon={<Search />} onClick={() => step.ask('commands')} />
        <Link
          to={HELP}
          replace={step.preferences}
          className="button button-icon"
          aria-label={words.help}
          title={words.help}
        >
          <CircleHelp aria-hidden="true" />
        </Link>
      </div>
    </>
  );
}

/** Four strokes and a crease across them: counted, and folded. */
function Mark(): ReactNode {
  return (
    <svg viewBox="0 0 32 32" width="32" height="32" aria-hidden="true" className="mark">
      <path className="mark-card" d="M2 2h28v21l-7 7H2z" />
      <path className="mark-fold" d="M30 23l-7 7v-7z" />
      <path className="mark-stroke" d="M8 8v15M13 8v15M18 8v15M23 8v12" />
      <path className="mark-stroke mark-crease" d="M5 20.500L26.500 9.500" />
    </svg>
  );
}
