import { printLength, rulerBeside, toMm } from '../units';
import { sayReason, type Wording } from '../units/reason';
import type { StyleFault, StyleProof } from './prove-style';

const ruler = rulerBeside('in');

/** Lengths both ways, since an author works out one and measures the other: `1.59 mm (1/16 in)`. */
const wording: Wording = {
  length: (length) => `${Number(toMm(length).toFixed(2))} mm (${printLength(length, ruler).text})`,
  money: (minor) => `${minor}`,
};

/** A fault in at most eight lines of plain words: what, at which box, which panel, and what mends it. */
function sayFault(fault: StyleFault, tried: number): readonly string[] {
  const { check, where, remedy, at, boxes, facts } = fault;
  const sizes = at && Object.entries(at.sizes).map(([name, size]) => `${name} ${wording.length(size)}`);
  const chosen = at && Object.entries(at.options).map(([option, choice]) => `${option} ${choice}`);
  return [
    `${check}: ${sayReason(fault, wording)}`,
    `  where:  ${where}`,
    `  remedy: ${sayReason({ says: remedy, facts }, wording)}`,
    ...(at
      ? [
          `  box:    ${sizes?.join(', ')}`,
          `  card:   ${at.caliperUm / 1000} mm${chosen?.length ? `; ${chosen.join(', ')}` : ''}`,
          `  shown by ${boxes} of ${tried} boxes`,
        ]
      : []),
  ];
}

/** A whole proof in at most fifteen lines: two faults in full, how many more there are. */
export function sayProof({ style, tried, faults }: StyleProof): readonly string[] {
  if (faults.length === 0) return [`${style}: all is well at ${tried} boxes.`];
  const more = faults.length - 2;
  return [
    `${style}: ${faults.length} ${faults.length === 1 ? 'thing' : 'things'} to mend.`,
    ...faults.slice(0, 2).flatMap((fault) => sayFault(fault, tried)),
    ...(more > 0 ? [`and ${more} more; mend these first.`] : []),
  ];
}
