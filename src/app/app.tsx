import { useSaveFile } from '../screens/shelf/save-file';
import { type Planner, PlannerContext } from '../state/results/event-plan';
import { type Mixer, MixerContext, mixHere } from '../state/results/mix-result';
import { type Nester, NesterContext, nestHere } from '../state/results/nest-result';
import { askHere, type SheetAsker, SheetAskerContext } from '../state/results/sheet-asker';
import { WorkbookContext } from '../state/use-workbook';
import type { WorkbookStore } from '../state/workbook-store';
import { Button } from '../ui/fields/button';
import { BlankState } from '../ui/frame/blank-state';
import { type Printer, PrinterProvider } from '../ui/frame/printer';
import { useWords, WordsProvider } from '../ui/words';
import { english } from '../ui/words/english';
import { inLanguage } from '../ui/words/language';
import { Boundary } from './boundary';
import { OwnStylesHere } from './own-styles-here';
import { AppRoutes } from './routes';
import { RulerOfSettings } from './ruler-of-settings';

interface AppProps {
  readonly workbook: WorkbookStore;
  readonly planner: Planner;
  readonly printer: Printer;
  /** Without one, nests are worked out on the page itself. */
  readonly nester?: Nester;
  /** Without one, mixes are looked for on the page itself. */
  readonly mixer?: Mixer;
  /** Without one, counts are made on the page itself. */
  readonly asker?: SheetAsker;
}

/** The app round one workbook. */
export function App({
  workbook,
  planner,
  printer,
  nester = nestHere,
  mixer = mixHere,
  asker = askHere,
}: AppProps) {
  return (
    <WorkbookContext value={workbook}>
      <WordsProvider value={inLanguage('pages', english)}>
        <RulerOfSettings>
          <PlannerContext value={planner}>
            <NesterContext value={nester}>
              <MixerContext value={mixer}>
                <SheetAskerContext value={asker}>
                  <OwnStylesHere />
                  <PrinterProvider value={printer}>
                    <Boundary instead={({ message }) => <AppBroken detail={message} />}>
                      <AppRoutes />
                    </Boundary>
                  </PrinterProvider>
                </SheetAskerContext>
              </MixerContext>
            </NesterContext>
          </PlannerContext>
        </RulerOfSettings>
      </WordsProvider>
    </WorkbookContext>
  );
}

/** What stands in place of the whole app where what is round the pages could not be drawn. */
function AppBroken({ detail }: { detail: string }) {
  const { frame } = useWords();
  const saveFile = useSaveFile();
  return (
    <main className="page page-sheet" id="page">
      <BlankState
        title={frame.appBroken}
        act={
          <Button tone="act" onClick={() => location.reload()}>
            {frame.again}
          </Button>
        }
      >
        <p role="alert">{frame.appBrokenRemedy}</p>
        <Button onClick={() => saveFile({ kind: 'everything' })}>{frame.saveFile}</Button>
        <p className="caption">{detail}</p>
      </BlankState>
    </main>
  );
}
