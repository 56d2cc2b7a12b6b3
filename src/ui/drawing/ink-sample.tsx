import { useId } from 'react';
import { GLUE_LETTER } from '../../core/draw/net/glue-areas';
import { INKS } from '../../core/draw/strokes/inks';
import type { Ink } from '../../core/draw/strokes/types';
import { HatchPatterns } from './drawing-marks';
import { PX_PER_MM, strokeOf } from './ink-on-screen';
import './ink-sample.css';

/** What stands on the line in a drawing, and tells it from another. */
const ENDS: Partial<Readonly<Record<Ink, string>>> = {
  slit: 'M0.400 0.900v2.400M11.200 0.900v2.400',
  grain: 'M1.800 1L0.400 2.100l1.400 1.100M9.800 1l1.400 1.100-1.400 1.100',
  move: 'M9.600 0.800l1.600 1.300-1.600 1.300',
  dimension:
    'M0.300 2.100a0.900 0.900 0 1 0 1.800 0a0.900 0.900 0 1 0-1.800 0M5.100 3l1.800-1.800M9.500 3l1.800-1.800',
};

/** A short piece of one ink, as it looks in the drawing: a line, or a patch of hatch. */
export function InkSample({ ink }: { ink: Ink }) {
  const name = useId();
  const hatched = typeof INKS[ink].fill === 'object';
  return (
    <svg
      className="ink-sample"
      viewBox={`0 0 ${44 / PX_PER_MM} ${16 / PX_PER_MM}`}
      width="44"
      height="16"
      aria-hidden="true"
    >
      {hatched && <HatchPatterns name={name} />}
      {hatched ? (
        <rect
          x="0.4"
          y="0.4"
          width="10.8"
          height="3.4"
          className={`ink ink-${ink} ink-hatched`}
          fill={`url(#${name}-${ink})`}
          {...strokeOf(ink)}
        />
      ) : (
        <path d="M0.300 2.100H11.300" className={`ink ink-${ink}`} {...strokeOf(ink)} />
      )}
      {(ink === 'glue' || ink === 'glue-below') && (
        <text x="5.800" y="3.350" className="ink-sample-letter">
          {GLUE_LETTER[ink]}
        </text>
      )}
      {ENDS[ink] && <path d={ENDS[ink]} className={`ink ink-${ink}`} {...strokeOf(ink)} />}
    </svg>
  );
}
