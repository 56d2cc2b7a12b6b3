import { asSeen, flipped, quartersOf } from '../../../../src/core/bench/equal/card-lie';
import { firstLie } from '../../../../src/core/bench/first-lie';
import type { BenchOp } from '../../../../src/core/bench/types';
import type { CardKey, HeardSoFar, Reader } from './heard';
import { readSaid } from './read-length-words';
import {
  readCorners,
  readLowerSlits,
  readPath,
  readRuled,
  readScores,
  readStopped,
  readUprightWindow,
  readWindow,
} from './read-lines';
import {
  readAtTop,
  readDab,
  readFoldOnto,
  readFoldOntoTheirs,
  readGlue,
  readRing,
  readStick,
  readsOfClose,
  readThread,
} from './read-panel-acts';
import { isTemplateLine, readTemplateLine } from './read-template';

/** Each kind of sentence and what it says. The words are the card's own; nothing is shared with what writes them. */
const SENTENCES: readonly (readonly [RegExp, Reader])[] = [
  [/^Cut (\d.*?) × (.+?)( in| mm)?\.$/, readBlank],
  [/^(half turn|quarter turn clockwise|quarter turn counterclockwise)\.$/i, readTurn],
  [
    /^Turn back\.$/,
    (_, { turned }) => turned && [{ op: 'turn', quarters: quartersOf(-turned) as 1 | 2 | 3 }],
  ],
  [/^(half turn|quarter turn clockwise|quarter turn counterclockwise); the same\.$/i, readAgain],
  [/^Do the same at the (top)\.$/, readAtTop],
  [/^Turn (?:over left to right, )?(?:good side|inside) up\.$/, () => [{ op: 'flip' }]],
  [/^(Good side|Inside) up(?:, (.+) from the drawing)?\.$/, readFirstLie],
  [/^(Score|Slit) at (.+), from (.+) up\.$/, readStopped],
  [/^Score at (.+)\.$/, readScores],
  [/^Slit the lower (.+) at (.+)\.$/, readLowerSlits],
  [/^Cut away (?:the (.+)|all four) corners?: (.+) × (.+?)( in| mm)?\.$/, readCorners],
  [/^(Score|Slit|Snip) from (.+?)(; keep the smaller part)?(?:; the same (.+))?\.$/, readRuled],
  [/^Cut out the window from (.+) to (.+)\.$/, readUprightWindow],
  [/^Cut out the window with corners (.+)\.$/, readWindow],
  [
    /^Fold every score right over(?:, (away from|towards) its scored side)?; rub down, open\.$/,
    ([way]) => [{ op: 'crease', over: way === 'towards' ? 'groove' : 'bead' }],
  ],
  [/^(Tape|Press) (.+), and (.+)\.$/, readTogether],
  [/^Tape the (inside|outside) of (.+?), (?:(\d+) strips of )?([^,]+?)( each)?\.$/, readStick],
  [/^Thread (.+) of ribbon through (.+)\.$/, readThread],
  [/^Dab liquid glue on the (inside|outside) of (.+)\.$/, readDab],
  [/^Press (.+), each to (?:the (inside|outside) of )?the next (.+)\.$/, readRing],
  [/^Press (.+?) to (?:the (inside|outside) of )?(.+)\.$/, readGlue],
  [/^Fold (.+) (over|up|in) onto their tabs\.$/, readFoldOntoTheirs],
  [/^Fold (.+?) (over|up|in) onto (.+)\.$/, readFoldOnto],
  ...readsOfClose(),
  [/^(?:Score|Cut) along the template\.$|^Cut out the holes\.$/, () => []],
  [/^Cut corner to corner, across × up\.$/, () => []],
  [/^(\d.* × .+?)(; keep the smaller part)?(?:; the same (.+))?\.$/, readPath],
];

/** The acts that a sentence says, or null if it says nothing known. */
export function readSentence(sentence: string, heard: HeardSoFar): readonly BenchOp[] | null {
  if (isTemplateLine(sentence)) return readTemplateLine(sentence, heard);
  for (const [pattern, reader] of SENTENCES) {
    const found = pattern.exec(sentence);
    const ops = found ? reader(found.slice(1), heard) : null;
    if (ops) return ops;
  }
  return null;
}

/** `11 × 4 1/2 in`: where both are on their marks the unit is said once. */
function readBlank(
  [first = '', second = '', unit = '']: readonly string[],
  { key }: HeardSoFar,
): BenchOp[] | null {
  const across = readSaid(first, key.unit);
  const up = readSaid(`${second}${unit}`, key.unit);
  return across === null || up === null ? null : [{ op: 'blank', across, up }];
}

function readTurn([turn = '']: readonly string[], { key }: HeardSoFar): BenchOp[] {
  return [{ op: 'turn', quarters: quartersSaid(turn, key.fence) }];
}

/** Counterclockwise as eyes see it; measured from a fence on the right, a turn runs the other way. */
function quartersSaid(turn: string, fence: CardKey['fence']): 1 | 2 | 3 {
  const said = turn.toLowerCase();
  if (said === 'half turn') return 2;
  return (said === 'quarter turn counterclockwise') === (fence === 'left') ? 1 : 3;
}

function readAgain([turn = '']: readonly string[], heard: HeardSoFar): BenchOp[] {
  return [...readTurn([turn], heard), ...heard.before.filter(({ op }) => op !== 'turn' && op !== 'flip')];
}

/** What brings the blank from the net's own frame to how it is said to lie, which is seen from the drawing. */
function readFirstLie(
  [face, turn]: readonly (string | undefined)[],
  { lie, key: { fence, tabEnd } }: HeardSoFar,
): BenchOp[] {
  const drawn = firstLie(tabEnd, face === 'Good side');
  const said = turn === undefined ? 0 : quartersSaid(turn, 'left');
  const wanted = asSeen({ ...drawn, quarters: quartersOf(drawn.quarters + said) }, fence);
  const flips = wanted.mirrored !== lie.mirrored;
  const by = quartersOf(wanted.quarters - (flips ? flipped(lie) : lie).quarters);
  return [
    ...(flips ? [{ op: 'flip' } as const] : []),
    ...(by === 0 ? [] : [{ op: 'turn', quarters: by } as const]),
  ];
}

/** Two sentences with one verb. */
function readTogether(
  [verb = '', one = '', other = '']: readonly string[],
  heard: HeardSoFar,
): readonly BenchOp[] | null {
  const [first, second] = [readSentence(`${verb} ${one}.`, heard), readSentence(`${verb} ${other}.`, heard)];
  return first && second && [...first, ...second];
}
