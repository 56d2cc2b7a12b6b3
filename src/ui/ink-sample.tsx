import { useId } from 'react';
import { INKS } from '../core/draw/inks';
import type { Ink } from '../core/draw/types';
import { HatchPatterns } from './drawing-marks';
import { PX_PER_MM, strokeOf } from './ink-on-screen';

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
          className="ink ink-guide ink-hatched"
          fill={`url(#${name}-${ink})`}
        />
      ) : (
        <path d="M0.300 2.100H11.300" className={`ink ink-${ink}`} {...strokeOf(ink)} />
      )}
      {ink === 'slit' && (
        <path d="M0.400 0.900v2.400M11.200 0.900v2.400" className="ink ink-slit" {...strokeOf(ink)} />
      )}
      {ink === 'grain' && (
        <path
          d="M1.800 1L0.400 2.100l1.400 1.100M9.800 1l1.400 1.100-1.400 1.100"
          className="ink ink-grain"
          {...strokeOf(ink)}
        />
      )}
    </svg>
  );
}
