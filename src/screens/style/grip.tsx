import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { DIRECTIONS, SIDES } from '../../core/draft/sides';
import type { At } from '../../core/plane';
import { PX_PER_MM } from '../../ui/drawing/ink-on-screen';
import { keyIn } from '../../ui/frame/keys';

/** As wide as a fingertip needs (WCAG 2.2, 2.5.8 asks for 24). source: our own, CSS pixels */
const REACH_PX = 16;
const FACE_PX = 11;
const STRIDE = 8;

/** How far a grip has moved on the card: in millimeters, or in marks of the ruler. */
export type Move = readonly [across: number, up: number];

interface GripProps {
  readonly at: At;
  /** Which ways it can go. */
  readonly along: 'across' | 'up' | 'both';
  readonly label: string;
  readonly says: string;
  readonly mm: number;
  readonly describedBy?: string;
  /** Units of the drawing for a millimeter of card. */
  readonly scale: number;
  /** Called at every move with how far it is from where it was taken; null when it is let go. */
  readonly onPull: (moved: Move | null) => void;
  readonly onDrop: (moved: Move) => void;
  /** An arrow, in marks of the ruler. */
  readonly onStep: (marks: Move) => void;
}

/** A handle on the drawing: dragged with mouse, pen or finger, or moved by arrows when it has the focus. */
export function Grip(props: GripProps) {
  const { at, along, label, says, mm, describedBy, scale, onPull, onDrop, onStep } = props;
  const from = useRef<At | null>(null);
  const moved = useRef(false);
  const movedTo = (event: PointerEvent<SVGGElement>): Move | null => {
    const seen = event.currentTarget.ownerSVGElement?.getScreenCTM();
    if (!seen || from.current === null) return null;
    const [x, y] = from.current;
    return [(event.clientX - x) / seen.a / scale, (y - event.clientY) / seen.d / scale];
  };
  const letGo = () => {
    from.current = null;
    onPull(null);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (from.current !== null && keyIn('text', event)?.[0] === 'back') {
      letGo();
      return;
    }
    const [stride, nth = 0] = keyIn('length', event) ?? [];
    const [act, way] = keyIn('drawing', event) ?? [];
    const arrow = stride === 'stride' ? SIDES[nth + 2] : act === 'move' ? SIDES[way ?? 0] : undefined;
    if (arrow === undefined) return;
    const [across, up] = DIRECTIONS[arrow];
    event.preventDefault();
    event.stopPropagation();
    const times = stride === 'stride' ? STRIDE : 1;
    onStep([across * times, up * times]);
  };
  const [x, y] = at;
  return (
    <g
      role="slider"
      tabIndex={0}
      aria-label={label}
      aria-valuenow={Math.round(mm * 100) / 100}
      aria-valuemin={0}
      aria-valuemax={1000}
      aria-valuetext={says}
      aria-describedby={describedBy}
      aria-orientation={along === 'up' ? 'vertical' : 'horizontal'}
      className={`style-grip style-grip-${along}`}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        from.current = [event.clientX, event.clientY];
        moved.current = false;
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={(event) => {
        const way = movedTo(event);
        if (way === null) return;
        moved.current ||= Math.hypot(...way) * scale * PX_PER_MM > 3;
        if (moved.current) onPull(way);
      }}
      onPointerUp={(event) => {
        const way = movedTo(event);
        letGo();
        if (way !== null && moved.current) onDrop(way);
      }}
      onPointerCancel={letGo}
      onClick={(event) => {
        // the end of a drag is not a tap on what is under it
        if (moved.current) event.stopPropagation();
      }}
    >
      <circle cx={x} cy={y} r={REACH_PX / PX_PER_MM} className="style-grip-reach" />
      <circle cx={x} cy={y} r={FACE_PX / PX_PER_MM} className="style-grip-face" />
      {along !== 'up' && <path d={arrows(x, y, 1, 0)} className="style-grip-arrow" />}
      {along !== 'across' && <path d={arrows(x, y, 0, 1)} className="style-grip-arrow" />}
    </g>
  );
}

/** An arrow with two heads through a point, along (1, 0) or (0, 1). */
function arrows(x: number, y: number, dx: number, dy: number): string {
  const [reach, head] = [6 / PX_PER_MM, 3 / PX_PER_MM];
  const tip = (way: 1 | -1) => {
    const [tx, ty] = [x + dx * reach * way, y + dy * reach * way];
    const [bx, by] = [tx - dx * head * way, ty - dy * head * way];
    return `M${bx - dy * head} ${by - dx * head}L${tx} ${ty}L${bx + dy * head} ${by + dx * head}`;
  };
  return `M${x - dx * reach} ${y - dy * reach}L${x + dx * reach} ${y + dy * reach}${tip(1)}${tip(-1)}`;
}
