import type { ConstraintSpec } from '../language/types';

/** What is said of a lid that is not a third to half as deep as what it goes over. source: a third to a half, common practice, no source */
export const LID_DEPTH_NOTES: readonly ConstraintSpec[] = [
  {
    code: 'lid-too-shallow',
    symbol: 'lip',
    atLeast: '1/3 height',
    severity: 'note',
    says: 'A lid {lip} deep holds loosely on walls {height} high.',
    remedy: 'A third of them is usual: at least {limit}.',
  },
  {
    code: 'lid-too-deep',
    symbol: 'lip',
    atMost: '1/2 height',
    severity: 'note',
    says: 'A lid {lip} deep is hard to lift off walls {height} high.',
    remedy: 'Half of them is usual: at most {limit}.',
  },
];
