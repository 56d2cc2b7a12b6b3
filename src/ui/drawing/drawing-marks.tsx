import { memo } from 'react';
import { INKS } from '../../core/draw/strokes/inks';
import { pointOfArc, type TextMark } from '../../core/draw/strokes/marks';
import type { Ink, Mark } from '../../core/draw/strokes/types';
import type { At } from '../../core/plane';
import { classNames } from '../frame/class-names';
import { PX_PER_MM, strokeOf } from './ink-on-screen';

const HATCHED = (Object.keys(INKS) as Ink[]).filter((ink) => typeof INKS[ink].fill === 'object');

/** Turns y up into the screen's y down. */
type Flip = (at: At) => At;
const pointList = (points: readonly At[], flip: Flip) => points.map((at) => flip(at).join(',')).join(' ');
const ringPath = (rings: readonly (readonly At[])[], flip: Flip) =>
  rings.map((ring) => `M${ring.map((at) => flip(at).join(' ')).join('L')}Z`).join('');

function shapeOf(mark: Exclude<Mark, TextMark>, flip: Flip): string {
  if (mark.kind === 'area') return ringPath([mark.ring, ...(mark.holes ?? [])], flip);
  if (mark.kind === 'line') return `M${pointList(mark.points, flip).replaceAll(' ', 'L')}`;
  const from = flip(pointOfArc(mark.centre, mark.radius, mark.fromDeg));
  const to = flip(pointOfArc(mark.centre, mark.radius, mark.fromDeg + mark.sweepDeg));
  const large = Math.abs(mark.sweepDeg) > 180 ? 1 : 0;
  return `M${from.join(' ')}A${mark.radius} ${mark.radius} 0 ${large} ${mark.sweepDeg > 0 ? 0 : 1} ${to.join(' ')}`;
}

interface InkedProps {
  readonly marks: readonly Mark[];
  readonly flip: Flip;
  /** Makes pattern names of this drawing its own on the page. */
  readonly name: string;
  readonly lit: readonly string[];
}

/** Lines and areas in their inks; strokes keep their width at every zoom. */
export const InkedMarks = memo(function InkedMarks({ marks, flip, name, lit }: InkedProps) {
  return marks.map((mark, place) => {
    if (mark.kind === 'text' || mark.ink === 'join') return null;
    const hatched = typeof INKS[mark.ink].fill === 'object' && mark.kind === 'area';
    return (
      <path
        // biome-ignore lint/suspicious/noArrayIndexKey: a drawing is replaced whole, its marks have no other name
        key={place}
        d={shapeOf(mark, flip)}
        className={classNames(
          `ink ink-${mark.ink}`,
          mark.kind === 'area' && 'ink-area',
          hatched && 'ink-hatched',
          mark.key !== undefined && lit.includes(mark.key) && 'ink-lit',
        )}
        {...strokeOf(mark.ink)}
        {...(hatched ? { fill: `url(#${name}-${mark.ink})` } : {})}
      />
    );
  });
});

/** Broad unseen strokes over every mark that has a row in the table, so that a fingertip finds a hairline. */
export const TouchMarks = memo(function TouchMarks({
  marks,
  flip,
  onLight,
}: Omit<InkedProps, 'name' | 'lit'> & { onLight: (key: string | null) => void }) {
  return marks.map((mark, place) =>
    mark.kind === 'text' || mark.kind === 'area' || mark.key === undefined ? null : (
      <path
        // biome-ignore lint/suspicious/noArrayIndexKey: as above
        key={place}
        d={shapeOf(mark, flip)}
        className="ink-touch"
        data-key={mark.key}
        onPointerEnter={() => onLight(mark.key ?? null)}
        onPointerLeave={(event) => event.pointerType === 'mouse' && onLight(null)}
      />
    ),
  );
});

interface WordsProps {
  readonly marks: readonly Mark[];
  readonly flip: Flip;
  readonly lit: readonly string[];
  readonly onLight: (key: string | null) => void;
}

/** Pixels of halo that keep lines off the letters, and of the patch behind lit ones. */
const HALO_PX = 4;
const PATCH_PX = 9;

export const DrawnWords = memo(function DrawnWords({ marks, flip, lit, onLight }: WordsProps) {
  return marks.map((text, place) => {
    if (text.kind !== 'text') return null;
    const [x, y] = flip(text.at);
    const { key } = text;
    const isLit = key !== undefined && lit.includes(key);
    return (
      <text
        // biome-ignore lint/suspicious/noArrayIndexKey: as above
        key={place}
        x={x}
        y={y}
        fontSize={text.sizeMm}
        textAnchor={text.anchor}
        transform={text.turnDeg ? `rotate(${-text.turnDeg} ${x} ${y})` : undefined}
        strokeWidth={(isLit ? PATCH_PX : HALO_PX) / PX_PER_MM}
        className={classNames('drawn-word', text.bold && 'drawn-word-bold', isLit && 'drawn-word-lit')}
        {...(key === undefined
          ? {}
          : { onPointerEnter: () => onLight(key), onPointerLeave: () => onLight(null) })}
      >
        {text.text}
      </text>
    );
  });
});

/** Hatches as in print: same angles, same distance. */
export function HatchPatterns({ name }: { name: string }) {
  return (
    <defs>
      {HATCHED.map((ink) => {
        const { fill } = INKS[ink];
        if (typeof fill !== 'object') return null;
        const { gapMm, anglesDeg, dashMm } = fill;
        const period = dashMm.length === 0 ? gapMm : dashMm.reduce((sum, mm) => sum + mm, 0);
        return (
          <pattern
            key={ink}
            id={`${name}-${ink}`}
            width={period}
            height={gapMm}
            patternUnits="userSpaceOnUse"
            patternTransform={`rotate(${-(anglesDeg[0] ?? 45)})`}
          >
            {/* WebKit draws no pattern whose picture has no height, so a dot that nobody sees gives it one. source: tried there */}
            <path
              className="ink-hatch"
              d={`M0 ${gapMm / 2}H${dashMm[0] ?? gapMm}M${anglesDeg.length > 1 ? `${gapMm / 2} 0V${gapMm}` : '0 0V0.01'}`}
            />
          </pattern>
        );
      })}
    </defs>
  );
}
