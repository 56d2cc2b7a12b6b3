import { createStore, type StoreApi } from 'zustand/vanilla';
import { FIRST_SETTINGS } from '../../shared/settings';
import { bootIntents } from './boot-intents';
import { fileIntents } from './file-intents';
import { NO_HISTORY } from './history';
import { NO_BACKUP } from './notes';
import type { WorkbookPorts } from './ports';
import { rowIntents } from './row-intents';
import { EMPTY_SHELF } from './shelf';
import type { WorkbookState } from './workbook-state';
import { Workshop } from './workshop';

export type WorkbookStore = StoreApi<WorkbookState>;

/** The workbook of this tab: empty and `opening` until `boot()` has loaded it. */
export function createWorkbookStore(ports: WorkbookPorts): WorkbookStore {
  return createStore<WorkbookState>()((setState, getState) => {
    const shop = new Workshop(ports, { getState, setState });
    return {
      phase: { phase: 'opening' },
      rows: EMPTY_SHELF,
      settings: FIRST_SETTINGS,
      save: { state: 'saved' },
      keeps: 'browser',
      persisted: null,
      backup: NO_BACKUP,
      quarantined: [],
      salvaged: null,
      folder: null,
      notices: [],
      history: NO_HISTORY,
      fresh: false,
      ...rowIntents(shop),
      ...fileIntents(shop),
      ...bootIntents(shop),
    };
  });
}
