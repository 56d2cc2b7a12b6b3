import type { At } from '../../core/plane';
import { PX_PER_MM } from '../../ui/drawing/ink-on-screen';
import { keyIn } from '../../ui/frame/keys';

/** source: our own, CSS pixels; a target has 24 at least (WCAG 2.2, 2.5.8) */
const FACE_PX = 12;
/** How far the line between two ends bends, as a share of its length. source: our own */
const BEND = 0.16;

interface PairBadgesProps {
  readonly pairs: readonly { readonly key: string; readonly text: string; readonly ends: readonly At[] }[];
  readonly picked: string | null;
  readonly onPick: (key: string) => void;
}

/** Pairs that meet, drawn on the net: the same number at both ends, and a dashed line between them. */
export function PairBadges({ pairs, picked, onPick }: PairBadgesProps) {
  return pairs.map(({ key, text, ends }, nth) => {
    const [a, b] = ends;
    if (a === undefined || b === undefined) return null;
    const bent: At = [(a[0] + b[0]) / 2 - BEND * (b[1] - a[1]), (a[1] + b[1]) / 2 + BEND * (b[0] - a[0])];
    return (
      // biome-ignore lint/a11y/noStaticElementInteractions: its first number is the button; its second serves pointers only
      <g
        key={key}
        className={key === picked ? 'style-pair-drawn style-pair-picked' : 'style-pair-drawn'}
        onClick={(event) => {
          event.stopPropagation();
          onPick(key);
        }}
      >
        <path d={`M${a.join(' ')}Q${bent.join(' ')} ${b.join(' ')}`} className="style-pair-line" />
        {/* biome-ignore lint/a11y/useSemanticElements: a button can’t lie within a drawing */}
        <g
          role="button"
          tabIndex={0}
          aria-label={`${nth + 1}: ${text}`}
          aria-pressed={key === picked}
          onKeyDown={(event) => {
            if (keyIn('text', event)?.[0] === 'take') onPick(key);
          }}
        >
          <Badge at={a} number={nth + 1} />
        </g>
        <Badge at={b} number={nth + 1} />
      </g>
    );
  });
}

function Badge({ at: [x, y], number }: { readonly at: At; readonly number: number }) {
  return (
    <>
      <circle cx={x} cy={y} r={FACE_PX / PX_PER_MM} className="style-pair-badge" />
      <text x={x} y={y} textAnchor="middle" dominantBaseline="central" className="style-pair-number">
        {number}
      </text>
    </>
  );
}
