import type { BoxNet } from '../net/types';
import { OWN_NET } from '../styles/boxes/own-net';
import { checkBox } from './check-box';
import type { ToolReach } from './check-handling';
import type { Finding } from './finding';

/** What a flat sheet cannot be, whatever its file means by its folds. */
const FLAT_FAULTS: ReadonlySet<string> = new Set(['panels-overlap-flat', 'panel-crosses-itself']);

/**
 * Everything a maker should know about a net of her own. Its file rarely says how far each line folds or which panel ends up on top, so what
 * goes wrong when it is closed warns her and does not stop the work; what cannot lie flat does. `roomMeasured`: the file names no room.
 */
export function checkOwnNet(box: BoxNet, roomMeasured: boolean, tool?: ToolReach): Finding[] {
  const found = checkBox(OWN_NET, box, tool).map(
    (finding): Finding =>
      finding.severity === 'stop' && !FLAT_FAULTS.has(finding.code)
        ? { ...finding, severity: 'warn', remedy: OWN_REMEDY }
        : finding,
  );
  return roomMeasured ? [...found, ROOM_NOTE] : found;
}

const OWN_REMEDY = 'Fold one from scrap first. If it doesn’t close, fix the file and import it again.';

const ROOM_NOTE: Finding = {
  code: 'own-net-room',
  severity: 'note',
  where: 'own-net',
  facts: {},
  says: 'The file doesn’t give an inside size, so we take it from the first panel and those beside it.',
  remedy: 'Measure the first box you fold.',
};
