import { createStore, type StoreApi } from 'zustand/vanilla';
import { FIRST_SETTINGS } from '../../shared/settings';
import { bootIntents } from './intents/boot-intents';
import { fileIntents } from './intents/file-intents';
import { rowIntents } from './intents/row-intents';
import { NO_HISTORY } from './keeping/history';
import { NO_BACKUP } from './keeping/notes';
import type { WorkbookPorts } from './ports';
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
      settings: ports.firstSettings ?? FIRST_SETTINGS,
      save: { state: 'saved' },
      keeps: 'browser',
      persisted: null,
      backup: NO_BACKUP,
      quarantined: [],
      salvaged: null,
      folder: null,
      sharing: null,
      notices: [],
      history: NO_HISTORY,
      fresh: false,
      ...rowIntents(shop),
      ...fileIntents(shop),
      ...bootIntents(shop),
    };
  });
}
