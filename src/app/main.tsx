import './fetch-ahead';
import '../core/rows/jitless';
import './css/tokens.css';
import './css/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { HashRouter } from 'react-router';
import { noteMissingPart } from '../state/results/unanswered';
import { createWorkbookStore } from '../state/workbook-store';
import { WordsProvider } from '../ui/words';
import { english } from '../ui/words/english';
import { inLanguage, isBritish, speak } from '../ui/words/language';
import { App } from './app';
import { askInWorker } from './ask-in-worker';
import { browserPorts } from './browser-ports';
import { browserPrinter } from './browser-printer';
import { planInWorker } from './plan-in-worker';
import { mixInWorker, nestInWorker } from './search-in-worker';

interface PolicyFactory {
  createPolicy(name: string, rules: { createScriptURL: (address: string) => string }): unknown;
}

/** Under Trusted Types a worker may start only from an address that a policy let through: ours lets through this app's own files, and nothing else. */
function trustOwnScripts(): void {
  const factory = (window as { trustedTypes?: PolicyFactory }).trustedTypes;
  factory?.createPolicy('default', {
    createScriptURL(address) {
      if (new URL(address, location.href).origin !== location.origin)
        throw new TypeError(`not our own script: ${address}`);
      return address;
    },
  });
}

/** Hears of every script that is fetched later and does not come, and of a style sheet that did not. */
function tellOfMissingParts(): void {
  addEventListener('vite:preloadError', noteMissingPart);
  addEventListener('load', () => {
    if (getComputedStyle(document.documentElement).getPropertyValue('--ink') === '') noteMissingPart();
  });
}

/** Whether a page of another site holds this one in a frame. It could then lay pictures over the buttons and guide the maker's clicks. */
function isFramedElsewhere(): boolean {
  try {
    return window.top?.location.origin !== location.origin;
  } catch {
    // The browser does not even let us look.
    return true;
  }
}

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
