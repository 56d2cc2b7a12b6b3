import { type KeyboardEvent, type PointerEvent, type RefObject, useEffect, useRef } from 'react';
import { keyIn } from '../frame/keys';
import { type Gaze, type Pane, WHOLE, zoomAbout } from './pan-zoom';

const STEP = 1.4;
const NUDGE_PX = 60;
/** In the order of the keys: left, right, up, down. */
const NUDGES: readonly (readonly [number, number])[] = [
  [NUDGE_PX, 0],
  [-NUDGE_PX, 0],
  [0, NUDGE_PX],
  [0, -NUDGE_PX],
];

/**
 * Pan and zoom over a drawing of this size in CSS pixels: Ctrl with the wheel, pinch, drag, and + - 0 and arrows when the drawing has the focus. A plain wheel and one finger
 * scroll the page as ever while the whole drawing is in view, so nobody is trapped.
 */
export function usePanZoom(
  svg: RefObject<SVGSVGElement | null>,
  gaze: Gaze,
  setGaze: (gaze: Gaze) => void,
  drawn: Pane,
) {
  const fingers = useRef(new Map<number, { x: number; y: number }>());
  const zoomed = gaze.zoom > 1;

  const shareAt = (clientX: number, clientY: number): readonly [number, number] => {
    const box = svg.current?.getBoundingClientRect();
    if (!box) return [gaze.u, gaze.v];
    return [
      gaze.u + (clientX - box.left - box.width / 2) / drawn.width,
      gaze.v + (clientY - box.top - box.height / 2) / drawn.height,
    ];
  };
  const panBy = (dx: number, dy: number) =>
    setGaze({ ...gaze, u: gaze.u - dx / drawn.width, v: gaze.v - dy / drawn.height });
  const zoomBy = (factor: number) => setGaze(zoomAbout(gaze, factor, [gaze.u, gaze.v]));

  useWheel(svg, (event) =>
    setGaze(zoomAbout(gaze, Math.exp(-event.deltaY / 240), shareAt(event.clientX, event.clientY))),
  );

  const actOf = (event: KeyboardEvent): (() => void) | undefined => {
    const [act, nth] = keyIn('drawing', event) ?? [];
    if (act === 'nearer') return () => zoomBy(STEP);
    if (act === 'farther') return () => zoomBy(1 / STEP);
    if (act === 'whole') return () => setGaze(WHOLE);
    const way = zoomed && nth !== undefined ? NUDGES[nth] : undefined;
    return way && (() => panBy(...way));
  };

  return {
    zoomed,
    zoomIn: () => zoomBy(STEP),
    zoomOut: () => zoomBy(1 / STEP),
    showAll: () => setGaze(WHOLE),
    handlers: {
      onPointerDown(event: PointerEvent) {
        fingers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
        if (zoomed || fingers.current.size > 1) svg.current?.setPointerCapture(event.pointerId);
      },
      onPointerMove(event: PointerEvent) {
        const from = fingers.current.get(event.pointerId);
        if (!from) return;
        const to = { x: event.clientX, y: event.clientY };
        const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
        fingers.current.set(event.pointerId, to);
        if (!other) {
          if (zoomed) panBy(to.x - from.x, to.y - from.y);
          return;
        }
        const spread =
          Math.hypot(to.x - other.x, to.y - other.y) /
          Math.max(1, Math.hypot(from.x - other.x, from.y - other.y));
        setGaze(zoomAbout(gaze, spread, shareAt((to.x + other.x) / 2, (to.y + other.y) / 2)));
      },
      onPointerUp: (event: PointerEvent) => void fingers.current.delete(event.pointerId),
      onPointerCancel: (event: PointerEvent) => void fingers.current.delete(event.pointerId),
      onKeyDown(event: KeyboardEvent) {
        const asked = actOf(event);
        if (!asked) return;
        event.preventDefault();
        asked();
      },
    },
  };
}

/** Hears Ctrl with the wheel. It must be able to say no to the page, which a passive React listener cannot. */
function useWheel(svg: RefObject<SVGSVGElement | null>, zoom: (event: WheelEvent) => void): void {
  const heard = useRef(zoom);
  useEffect(() => {
    heard.current = zoom;
  });
  useEffect(() => {
    const target = svg.current;
    const listener = (event: WheelEvent) => {
      if (!event.ctrlKey && !event.metaKey) return;
      event.preventDefault();
      heard.current(event);
    };
    target?.addEventListener('wheel', listener, { passive: false });
    return () => target?.removeEventListener('wheel', listener);
  }, [svg]);
}
