import './fetch-ahead';
import '../core/rows/jitless';
import './css/tokens.css';
import './css/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { HashRouter } from 'react-router';
import { createWorkbookStore } from '../state/workbook-store';
import { WordsProvider } from '../ui/words';
import { english } from '../ui/words/english';
import { inLanguage, isBritish, speak } from '../ui/words/language';
import { App } from './app';
import { askInWorker } from './ask-in-worker';
import { browserPorts } from './browser-ports';
import { browserPrinter } from './browser-printer';
import { isFramedElsewhere } from './framed';
import { tellOfMissingParts } from './missing-parts';
import { mixInWorker } from './mix-in-worker';
import { nestInWorker } from './nest-in-worker';
import { planInWorker } from './plan-in-worker';
import { trustOwnScripts } from './trusted-scripts';

trustOwnScripts();
tellOfMissingParts();
const framed = isFramedElsewhere();
const workbook = createWorkbookStore(browserPorts());
if (!framed) void workbook.getState().boot();

const planner = planInWorker();
const asker = askInWorker();

/** British English, or that of the United States where it cannot be fetched. */
async function speakBritish(): Promise<void> {
  try {
    speak((await import('../ui/words/british')).british);
    document.documentElement.lang = 'en-GB';
  } catch {
    // The first language is there.
  }
}

function draw(): void {
  const root = document.getElementById('root');
  if (!root) return;
  if (framed) {
    void drawFramed(root);
    return;
  }
  const printer = browserPrinter(workbook, inLanguage('pages', english));
  createRoot(root).render(
    <StrictMode>
      <HashRouter>
        <App
          workbook={workbook}
          planner={planner}
          nester={nestInWorker}
          mixer={mixInWorker}
          asker={asker}
          printer={printer}
        />
      </HashRouter>
    </StrictMode>,
  );
}

async function drawFramed(root: HTMLElement): Promise<void> {
  const { FramedPage } = await import('./framed-page');
  createRoot(root).render(
    <WordsProvider value={inLanguage('pages', english)}>
      <FramedPage />
    </WordsProvider>,
  );
}

if (isBritish(navigator.language)) void speakBritish().then(draw);
else draw();
