import type { ExchangeDoor } from '../../src/state/ports';
import type { WorkbookStore } from '../../src/state/workbook-store';
import { letRun, openTab, World } from './open-tab';
import { YjsExchange } from './yjs-exchange';

export interface Device {
  readonly store: WorkbookStore;
  readonly exchange: YjsExchange;
}

/** A device of its own: a disk nobody shares, and an exchange that carries nothing by itself. */
export async function device(name: string): Promise<Device> {
  const exchange = new YjsExchange();
  let joined: () => void = () => undefined;
  const isJoined = new Promise<void>((resolve) => {
    joined = resolve;
  });
  const open = (door: ExchangeDoor) => {
    door.join(exchange, 'ask', () => undefined);
    joined();
    return new Promise<never>(() => undefined);
  };
  const store = await openTab(new World(), name, undefined, { sharing: { isShared: () => true, open } });
  await isJoined;
  return { store, exchange };
}

/** Both hear of each other, and keep what they heard. */
export async function meet(...devices: readonly Device[]): Promise<void> {
  for (let round = 0; round < 2; round++) {
    await letRun(600);
    for (const one of devices)
      for (const other of devices) if (one !== other) one.exchange.hearFrom(other.exchange);
  }
  await letRun(600);
}
