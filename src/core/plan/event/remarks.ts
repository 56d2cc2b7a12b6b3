import type { Fact } from '../../units/reason';
import type { EventFinding } from './types';

/** Everything an event's plan may remark on. `{name}` stands for a length in the finding's facts. */
const REMARKS = {
  'recipe-missing': {
    severity: 'stop',
    says: 'This box is no longer on the shelf.',
    remedy: 'Choose another box, or restore the old one from the trash.',
  },
  'style-unknown': {
    severity: 'stop',
    says: 'We don’t know the style of this box.',
    remedy: 'Open it in the version that made it, or choose another style.',
  },
  'box-broken': {
    severity: 'stop',
    says: 'We couldn’t work out this box, so the event is planned without it.',
    remedy: 'Open Size and undo the last change, or import its net again.',
  },
  'dressing-missing': {
    severity: 'warn',
    says: 'The look chosen for this box is gone, so the boxes are planned plain.',
    remedy: 'Choose another look.',
  },
  'piece-does-not-fit': {
    severity: 'stop',
    says: 'This piece has no place on the box. Its panel is missing, or the margin is too large.',
    remedy: 'Choose another panel, or a smaller margin.',
  },
  'paper-missing': {
    severity: 'stop',
    says: 'This piece, {across} by {up}, has no paper yet.',
    remedy: 'Choose a paper on Count, for the box or for the piece.',
  },
  'part-fits-no-sheet': {
    severity: 'stop',
    says: 'This piece, {across} by {up}, doesn’t fit a sheet of {sheetAcross} by {sheetUp}.',
    remedy: 'Choose a larger sheet, or make the box smaller. An open-top box can also be made in two halves.',
  },
  'part-fits-across-grain': {
    severity: 'stop',
    says: 'This piece, {across} by {up}, fits a sheet of {sheetAcross} by {sheetUp} only across the grain.',
    remedy: 'Allow the grain either way and score carefully, or choose a sheet with the other grain.',
  },
  'part-fits-print-sideways': {
    severity: 'stop',
    says: 'This piece, {across} by {up}, fits a sheet of {sheetAcross} by {sheetUp} only with its print sideways.',
    remedy: 'Choose a larger sheet, or a paper that looks right either way.',
  },
  'tape-missing': {
    severity: 'warn',
    says: 'Each box needs {perBox} of tape, and no tape is chosen.',
    remedy: 'Choose a tape for the event.',
  },
  'tape-too-wide': {
    severity: 'warn',
    says: 'Tape {tape} wide is too wide for a glued panel {depth} deep.',
    remedy: 'Use tape at most {limit} wide, or liquid glue.',
  },
  'glue-missing': {
    severity: 'warn',
    says: 'The glue you chose is no longer in your supplies, so the boxes are planned with tape.',
    remedy: 'Choose a glue or a tape.',
  },
  'tie-missing': {
    severity: 'warn',
    says: 'Each box needs a piece {length} long, and no ribbon or twine is chosen.',
    remedy: 'Choose a ribbon or twine.',
  },
  'pull-missing': {
    severity: 'warn',
    says: 'The ribbon pull of each box takes {length}, and its look has no ribbon for it.',
    remedy: 'Add a ribbon to the look, and say that it goes through the pull.',
  },
  'supply-missing': {
    severity: 'warn',
    says: 'Every box needs this, and nothing from your supplies is chosen.',
    remedy: 'Choose it from your supplies.',
  },
  'longer-than-roll': {
    severity: 'stop',
    says: 'A piece {length} long is longer than one roll gives, {roll}.',
    remedy: 'Choose a longer roll.',
  },
  'rolls-almost-used-up': {
    severity: 'note',
    says: 'You need {total}, and these rolls leave only {left} for false starts.',
    remedy: 'Buy one roll more, or set its waste under Supplies.',
  },
  'crate-too-small': {
    severity: 'warn',
    says: 'A finished favor, {width} × {depth} × {height}, doesn’t fit in your crate.',
    remedy: 'Type a larger crate, or let favors lie down if what is inside allows it.',
  },
  'spoiled-beyond-spares': {
    severity: 'warn',
    says: 'More boxes went wrong than you had spares, so you need to make more.',
    remedy: 'Buy what the list adds, then make them.',
  },
  'closing-unknown': {
    severity: 'note',
    says: 'We know no fit of this style that your marks could spoil, so its spares go by the percentage.',
    remedy: 'Check that the percentage suits this box.',
  },
  'too-few-close': {
    severity: 'warn',
    says: 'With every mark off by up to {offBy}, only {closes} of 100 of these boxes close. Spares can’t make up for that, so they go by the percentage.',
    remedy: 'Mark more carefully, use thinner cardstock, or give the box more room.',
  },
  'order-below-minimum': {
    severity: 'warn',
    says: 'The list is below the shop’s minimum order.',
    remedy: 'Add something you need anyway, or buy elsewhere.',
  },
  'price-missing': {
    severity: 'note',
    says: 'This has no price, so the cost leaves it out.',
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
  'part-fits-print-sideways',
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
  facts: Readonly<Record<string, Fact>> = {},
): EventFinding => ({ code, where, about, facts, ...REMARKS[code] });
