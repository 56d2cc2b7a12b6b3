import { openSharing } from '../exchange/open-sharing';
import type { ExchangeDoor } from '../state/ports';
import type { SharingDesk } from '../state/sharing';
import { DATABASE_NAME } from '../storage/database-name';
import { waitForNetwork } from './wait-for-network';

/** The exchange beside the app, carried by one tab of this browser at a time. */
export const openHere = (door: ExchangeDoor, remember: (isShared: boolean) => void): Promise<SharingDesk> =>
  openSharing(door, DATABASE_NAME, {
    address: new URL('exchange', document.baseURI).href,
    now: () => Date.now(),
    alone: (work) =>
      'locks' in navigator ? navigator.locks.request('crease-and-count.sharing', work) : work(),
    wait: waitForNetwork,
    remember,
  });
