import type { ShownLink } from '../exchange/keys';
import { Visit, type VisitWorld } from '../exchange/visit';
import { createWorkbookStore, type WorkbookStore } from '../state/workbook-store';
import { NO_JOURNAL } from '../storage/journal';
import { openMemory } from '../storage/memory';
import { randomId } from '../storage/random-id';
import { settingsFor } from './first-settings';

/** What a visit needs of the browser besides what the exchange asks for. */
export interface VisitingWorld extends Omit<VisitWorld, 'onAbout'> {
  readonly language: string;
  readonly now: () => number;
  /** Does this while no other tab does anything of the same name. */
  readonly alone: (name: string, work: () => Promise<void>) => Promise<void>;
}

/** A workbook for one page, into which the event of a link is laid. It touches nothing of the workbook this browser keeps. */
export function visitingWorkbook(
  link: ShownLink,
  world: VisitingWorld,
): { readonly workbook: WorkbookStore; readonly close: () => void } {
  let close: () => void = () => undefined;
  const closed = new Promise<void>((resolve) => {
    close = resolve;
  });
  const workbook = createWorkbookStore({
    openStorage: () => Promise.resolve({ ok: true, value: openMemory() }),
    openMemory,
    journal: NO_JOURNAL,
    firstSettings: settingsFor(world.language),
    now: world.now,
    newId: randomId,
    askToPersist: () => Promise.resolve(null),
    sharing: {
      isShared: () => true,
      open(door) {
        const onAbout: VisitWorld['onAbout'] = ({ unit }) => workbook.getState().changeSettings({ unit });
        const visit = new Visit(door, link, { ...world, onAbout });
        door.show({ line: 'off', device: '', unsent: 0, devices: [], deletions: 0, shown: [] });
        void world.alone(link.name, async () => {
          await visit.start();
          await closed;
          visit.close();
        });
        return Promise.resolve(null);
      },
    },
  });
  void workbook.getState().boot();
  return { workbook, close };
}
