/** An act that is timed; the run sheet and the hours count these. */
export type HandAct =
  | 'cut'
  | 'score'
  | 'slit'
  | 'fold'
  | 'place'
  | 'glue'
  | 'close-bottom'
  | 'tuck'
  | 'fill'
  | 'tie-bow'
  | 'set-up';

export interface HandTime {
  readonly act: HandAct;
  readonly label: string;
  readonly seconds: number;
  readonly source: string;
}

const PRACTICE = 'common practice, no source: time your own and overwrite';

/** In the order of the batch: flat work first, decorating while it is flat, then glue and bottoms, then filling and tying. */
// biome-ignore format: a table
export const HAND_TIMES: readonly HandTime[] = [
  { act: 'cut', label: 'one trimmer cut, aligning included', seconds: 8, source: PRACTICE },
  { act: 'score', label: 'one score at the fence; a slanted or curved one counts as four', seconds: 5, source: PRACTICE },
  { act: 'slit', label: 'one stroke of knife or scissors', seconds: 4, source: PRACTICE },
  { act: 'fold', label: 'fold and burnish one line', seconds: 5, source: PRACTICE },
  { act: 'place', label: 'place a liner or layer square', seconds: 20, source: PRACTICE },
  { act: 'glue', label: 'lay and peel one strip of tape', seconds: 12, source: PRACTICE },
  { act: 'close-bottom', label: 'close a bottom of four flaps', seconds: 25, source: PRACTICE },
  { act: 'tuck', label: 'close by tucking', seconds: 5, source: PRACTICE },
  { act: 'fill', label: 'put one thing in', seconds: 5, source: PRACTICE },
  { act: 'tie-bow', label: 'ribbon both ways and a bow', seconds: 60, source: PRACTICE },
  { act: 'set-up', label: 'get a stage of work ready', seconds: 300, source: PRACTICE },
];

/** Rest and delay added to the working time, in percent. source: 29 CFR 525.12(h)(2)(ii), not less than 15 % for piece rates. */
export const ALLOWANCE_PERCENT = 15;
