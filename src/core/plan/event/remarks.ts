import type { Ticks } from '../../units';
import type { EventFinding } from './types';

/** Everything an event's plan may remark on. `{name}` stands for a length in the finding's facts. */
const REMARKS = {
  'recipe-missing': {
    severity: 'stop',
    says: 'The recipe of this line is no longer on the shelf.',
    remedy: 'Choose another recipe, or bring the old one back.',
  },
  'style-unknown': {
    severity: 'stop',
    says: 'The recipe’s box style is not known here.',
    remedy: 'Open it where it was made, or choose another style.',
  },
  'box-broken': {
    severity: 'stop',
    says: 'The box of this line cannot be worked out, so the event is planned without it.',
    remedy: 'Open its Size page and change what was changed last, or bring its net in anew.',
  },
  'dressing-missing': {
    severity: 'warn',
    says: 'The dressing chosen for this line is gone from its recipe, so the boxes are planned bare.',
    remedy: 'Choose a dressing of the recipe.',
  },
  'piece-does-not-fit': {
    severity: 'stop',
    says: 'This piece has no place on the box: its panel is gone, or nothing is left inside the reveal.',
    remedy: 'Choose another panel, or a smaller reveal.',
  },
  'paper-missing': {
    severity: 'stop',
    says: 'No paper is chosen for this part, {across} by {up}.',
    remedy: 'Choose a paper for the line, the recipe or the piece.',
  },
  'part-fits-no-sheet': {
    severity: 'stop',
    says: 'This part, {across} by {up}, fits no sheet of {sheetAcross} by {sheetUp}.',
    remedy:
      'Choose a larger sheet, or make the box smaller; an open-top box can also be made in two halves, each little more than half as long.',
  },
  'part-fits-across-grain': {
    severity: 'stop',
    says: 'This part, {across} by {up}, fits a sheet of {sheetAcross} by {sheetUp} only across the grain.',
    remedy: 'Let its grain run either way and score carefully, or choose a sheet with the other grain.',
  },
  'tape-missing': {
    severity: 'warn',
    says: 'The boxes take {perBox} of tape each, and no tape is chosen.',
    remedy: 'Choose a tape for the event.',
  },
  'tape-too-wide': {
    severity: 'warn',
    says: 'Tape {tape} wide is too wide for a glued panel {depth} deep.',
    remedy: 'Use tape at most {limit} wide, or liquid glue.',
  },
  'glue-missing': {
    severity: 'warn',
    says: 'The glue chosen for the boxes is no longer in the cupboard, so they are planned with tape.',
    remedy: 'Choose a glue or a tape.',
  },
  'tie-missing': {
    severity: 'warn',
    says: 'Each box takes a piece {length} long, and no ribbon or twine is chosen for it.',
    remedy: 'Choose a ribbon or twine.',
  },
  'supply-missing': {
    severity: 'warn',
    says: 'This is counted onto every box, and nothing in the cupboard is chosen for it.',
    remedy: 'Choose what it is taken from.',
  },
  'longer-than-roll': {
    severity: 'stop',
    says: 'A piece {length} long is longer than the whole roll, {roll}.',
    remedy: 'Choose a longer roll.',
  },
  'spoiled-beyond-spares': {
    severity: 'warn',
    says: 'More boxes of this line were spoiled at the bench than there were spares, so more are made.',
    remedy: 'Buy what the list now adds, then make them.',
  },
  'order-below-minimum': {
    severity: 'warn',
    says: 'The list comes to less than the least order the shop takes.',
    remedy: 'Add what you need anyway, or buy elsewhere.',
  },
  'price-missing': {
    severity: 'note',
    says: 'No price is known for this, so it is left out of the cost.',
    remedy: 'Enter its packs and prices.',
  },
} as const satisfies Record<string, Pick<EventFinding, 'severity' | 'says' | 'remedy'>>;

export type RemarkCode = keyof typeof REMARKS;
export const REMARK_CODES = Object.keys(REMARKS) as readonly RemarkCode[];

/** Remarks on what is missing from the parts, and so from the list of what to buy and from every sum. */
const LEAVES_OUT: readonly RemarkCode[] = [
  'recipe-missing',
  'style-unknown',
  'box-broken',
  'piece-does-not-fit',
  'paper-missing',
  'part-fits-no-sheet',
  'part-fits-across-grain',
  'longer-than-roll',
];

/** What an event makes that its plan does not hold: while there is any, what is to be bought and paid is not known. */
export const leftOutOf = ({
  findings,
}: {
  readonly findings: readonly EventFinding[];
}): readonly EventFinding[] => findings.filter(({ code }) => LEAVES_OUT.some((each) => each === code));

/** A finding of the plan about one row. */
export const remark = (
  code: RemarkCode,
  where: string,
  about: string,
  facts: Readonly<Record<string, Ticks>> = {},
): EventFinding => ({ code, where, about, facts, ...REMARKS[code] });
