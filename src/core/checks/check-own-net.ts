import type { BoxNet } from '../net/types';
import { OWN_NET } from '../styles/boxes/own-net';
import { checkBox } from './check-box';
import { checkClosingPath } from './check-closing-path';
import type { ToolReach } from './check-handling';
import { checkItemRoom } from './check-item-room';
import type { Finding } from './finding';

/** What a flat sheet cannot be, whatever its file means by its folds. */
const FLAT_FAULTS: ReadonlySet<string> = new Set(['panels-overlap-flat', 'panel-crosses-itself']);

/** More panels than this take too long to close while they wait. source: our own, measured: about a second */
const MOST_CLOSED = 80;

/**
 * Everything a maker should know about a net of their own. Its file rarely says how far each line folds or which panel ends up on top, so what
 * goes wrong when it is closed warns them and does not stop the work; what cannot lie flat does. `told` is what the file names: only a room it
 * names is tried with an item, only an order of closing it names is followed. `keep` may hold the slow part while the net stays the same.
 */
export function checkOwnNet(
  box: BoxNet,
  told: { readonly room: boolean; readonly closing: boolean },
  tool?: ToolReach,
  keep: (box: BoxNet, made: () => readonly Finding[]) => readonly Finding[] = (_, made) => made(),
): Finding[] {
  const found = checkBox(OWN_NET, box, tool);
  const panels = box.pieces.reduce((sum, { faces }) => sum + faces.length, 0);
  const isFlat = !found.some(({ code }) => FLAT_FAULTS.has(code));
  const isFollowed = told.closing && panels <= MOST_CLOSED;
  const tried = !isFlat
    ? []
    : keep(box, () => [
        ...(isFollowed ? checkClosingPath(box) : []),
        ...(told.room ? checkItemRoom(box) : []),
      ]);
  return [
    ...[...found, ...tried].map(
      (finding): Finding =>
        finding.severity === 'stop' && !FLAT_FAULTS.has(finding.code)
          ? { ...finding, severity: 'warn', remedy: OWN_REMEDY }
          : finding,
    ),
    ...(isFollowed ? [] : [PATH_NOTE]),
    ...(told.room ? [] : [ROOM_NOTE]),
  ];
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

const PATH_NOTE: Finding = {
  code: 'own-net-path',
  severity: 'note',
  where: 'own-net',
  facts: {},
  says: 'Nobody tried whether its panels pass each other while it is closed: the file does not say in which order, or there are too many.',
  remedy: 'Fold one from scrap before you cut the rest.',
};
