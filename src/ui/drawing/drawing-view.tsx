import { Maximize, Minus, Plus } from 'lucide-react';
import { type ReactNode, useCallback, useId, useMemo, useRef, useState } from 'react';
import type { Drawing } from '../../core/draw/strokes/types';
import type { At } from '../../core/plane';
import { IconButton } from '../fields/button';
import { matStepMm, useRuler } from '../fields/measure';
import { classNames } from '../frame/class-names';
import { useWords } from '../words';
import { DrawnWords, HatchPatterns, InkedMarks, TouchMarks } from './drawing-marks';
import { PX_PER_MM } from './ink-on-screen';
import { keepInView, WHOLE } from './pan-zoom';
import { usePaneSize } from './pane-size';
import { usePanZoom } from './use-pan-zoom';
import './drawing.css';

/** Room for a drawing, in millimeters of a page held at arm's length. */
export interface Space {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A drawing made for a space: how large the card stands in it, and where its lower left corner is. */
export interface FittedDrawing extends Drawing {
  readonly scale: number;
  readonly origin: At;
}

interface DrawingViewProps {
  /** Draws for the space there is, so that words and numbers keep their size at every zoom. */
  readonly draw: (space: Space) => FittedDrawing;
  /** Keys of the marks that are lit, here and wherever else they stand. */
  readonly lit?: readonly string[];
  readonly onLight?: (key: string | null) => void;
  /** Greyed while a newer one is being worked out. */
  readonly stale?: boolean;
  /** `still` for a picture that is looked at whole. */
  readonly still?: boolean;
  /** Laid on the card, under everything that is touched or read; told the same. */
  readonly under?: (place: (card: At) => At) => ReactNode;
  /** Laid over the drawing; told where a point of the card, in millimeters, comes to be in it. */
  readonly over?: (place: (card: At) => At) => ReactNode;
  /** Controls on the drawing, each with a name and a key of its own; told the same. */
  readonly hands?: (place: (card: At) => At) => ReactNode;
}

const NONE: readonly string[] = [];
const ignore = () => undefined;
const MARGIN_PX = 14;

/**
 * A drawing lying on the mat, whose squares are one inch or one centimeter of it. The whole of it is shown at first; buttons, Ctrl with the
 * wheel, pinch, drag, and + - 0 come closer. A mark pointed at lights up here and in the table that lists the same lines.
 */
export function DrawingView({
  draw,
  lit = NONE,
  onLight = ignore,
  stale = false,
  still = false,
  over,
  under,
  hands,
}: DrawingViewProps) {
  const ruler = useRuler();
  const name = useId();
  const svg = useRef<SVGSVGElement>(null);
  const pane = usePaneSize(svg);
  const [gaze, setGaze] = useState(WHOLE);
  const drawing = useMemo(
    () =>
      draw({
        widthMm: ((pane.width - 2 * MARGIN_PX) * gaze.zoom) / PX_PER_MM,
        heightMm: ((pane.height - 2 * MARGIN_PX) * gaze.zoom) / PX_PER_MM,
      }),
    [draw, pane, gaze.zoom],
  );
  const drawn = { width: drawing.widthMm * PX_PER_MM, height: drawing.heightMm * PX_PER_MM };
  const shown = keepInView(gaze, drawn, pane);
  const view = usePanZoom(svg, shown, setGaze, drawn);
  const { marks, heightMm, origin, scale } = drawing;
  const flip = useCallback(([x, y]: At): At => [x, heightMm - y], [heightMm]);
  const placeOfCard = ([x, y]: At): At => flip([origin[0] + x * scale, origin[1] + y * scale]);

  const [width, height] = [pane.width / PX_PER_MM, pane.height / PX_PER_MM];
  const window = {
    left: shown.u * drawing.widthMm - width / 2,
    top: shown.v * heightMm - height / 2,
    width,
    height,
  };

  const viewBox = `${window.left} ${window.top} ${width} ${height}`;

  return (
    <figure
      className={classNames('drawing', still ? 'drawing-still' : 'drawing-page', stale && 'drawing-stale')}
    >
      <svg
        ref={svg}
        role="img"
        aria-labelledby={`${name}-title ${name}-desc`}
        tabIndex={still ? undefined : 0}
        className={classNames('drawing-svg', view.zoomed && 'drawing-near')}
        viewBox={viewBox}
        {...(still ? {} : view.handlers)}
      >
        <title id={`${name}-title`}>{drawing.title}</title>
        <desc id={`${name}-desc`}>{drawing.description}</desc>
        <HatchPatterns name={name} />
        <MatGrid window={window} stepMm={matStepMm(ruler) * drawing.scale} from={flip(origin)} />
        <InkedMarks marks={marks} flip={flip} name={name} lit={lit} />
        {under?.(placeOfCard)}
        <TouchMarks marks={marks} flip={flip} onLight={onLight} />
        <DrawnWords marks={marks} flip={flip} lit={lit} onLight={onLight} />
        {over?.(placeOfCard)}
      </svg>
      {hands && (
        // biome-ignore lint/a11y/useSemanticElements: what lies over a drawing is a drawing too
        <svg className="drawing-hands" role="group" aria-labelledby={`${name}-title`} viewBox={viewBox}>
          {hands(placeOfCard)}
        </svg>
      )}
      {!still && <DrawingFoot view={view} />}
    </figure>
  );
}

/** What a square of the mat is, and the buttons that come closer and go farther. */
function DrawingFoot({ view }: { readonly view: ReturnType<typeof usePanZoom> }) {
  const words = useWords().drawing;
  const { unit } = useRuler();
  return (
    <figcaption className="drawing-foot">
      <span className="drawing-square">{words.square(unit)}</span>
      <fieldset className="drawing-tools screen-only" aria-label={words.view}>
        <IconButton label={words.closer} icon={<Plus />} onClick={view.zoomIn} />
        <IconButton label={words.farther} icon={<Minus />} onClick={view.zoomOut} disabled={!view.zoomed} />
        <IconButton label={words.whole} icon={<Maximize />} onClick={view.showAll} disabled={!view.zoomed} />
      </fieldset>
    </figcaption>
  );
}

interface MatGridProps {
  readonly window: {
    readonly left: number;
    readonly top: number;
    readonly width: number;
    readonly height: number;
  };
  readonly stepMm: number;
  /** Where a line of the grid passes: the drawing's own corner. */
  readonly from: At;
}

const lines = (from: number, start: number, length: number, step: number) => {
  const first = Math.ceil((start - from) / step);
  const count = Math.max(0, Math.min(400, Math.floor((start + length - from) / step) - first + 1));
  return Array.from({ length: count }, (_, n) => from + (first + n) * step);
};

/** The squares of the cutting mat, true to the drawing's scale; every fifth line is stronger. */
function MatGrid({ window: { left, top, width, height }, stepMm, from }: MatGridProps) {
  const path = (every: number) =>
    lines(from[0], left, width, stepMm * every)
      .map((x) => `M${x} ${top}v${height}`)
      .concat(lines(from[1], top, height, stepMm * every).map((y) => `M${left} ${y}h${width}`))
      .join('');
  return (
    <g className="mat-grid">
      <path className="mat-line" d={path(1)} />
      <path className="mat-line mat-line-strong" d={path(5)} />
    </g>
  );
}
