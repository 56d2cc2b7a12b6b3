import './fetch-ahead';
import '../core/rows/jitless';
import './css/tokens.css';
import './css/base.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { HashRouter } from 'react-router';
import { createWorkbookStore } from '../state/workbook-store';
import { App } from './app';
import { askInWorker } from './ask-in-worker';
import { browserPorts } from './browser-ports';
import { browserPrinter } from './browser-printer';
import { english } from './messages';
import { mixInWorker } from './mix-in-worker';
import { nestInWorker } from './nest-in-worker';
import { planInWorker } from './plan-in-worker';
import { trustOwnScripts } from './trusted-scripts';

trustOwnScripts();
const workbook = createWorkbookStore(browserPorts());
void workbook.getState().boot();

const planner = planInWorker();
const asker = askInWorker();
const printer = browserPrinter(workbook, english);

const root = document.getElementById('root');
if (root)
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
