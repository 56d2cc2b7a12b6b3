import { Maximize, Minus, Plus } from 'lucide-react';
import { type KeyboardEvent, useCallback, useEffect, useId, useRef, useState } from 'react';
import { drawFolded } from '../../core/draw/folded-drawing';
import type { PieceNet } from '../../core/net';
import { useWorkbook } from '../../state/use-workbook';
import { DrawingView, type Space } from '../../ui/drawing/drawing-view';
import { IconButton } from '../../ui/fields/button';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import type { FoldedThing, SceneColours, Shown } from '../../ui/folded/space/box-model';
import type { FoldScene, RulerLabel } from '../../ui/folded/space/fold-scene';
import { keyIn } from '../../ui/frame/keys';
import { usePageWords } from '../../ui/words';
import { ticksOf } from './sizes-and-angles';

const PLAIN_CARD = '#f4efe4';

interface FoldStageProps {
  readonly thing: FoldedThing;
  readonly piece: PieceNet;
  readonly done: number;
  readonly shown: Shown;
  readonly colour: string | undefined;
  /** What the picture shows, in words. */
  readonly name: string;
}

const NO_LABELS: readonly RulerLabel[] = [];

const drawsInSpace = (): boolean => {
  try {
    return document.createElement('canvas').getContext('webgl2') !== null;
  } catch {
    return false;
  }
};

/** The card in space, turned by mouse, finger or keys; where the browser draws nothing in space, the same state as a line drawing. */
export function FoldStage(props: FoldStageProps) {
  const [inSpace, setInSpace] = useState(drawsInSpace);
  const onLost = useCallback(() => setInSpace(false), []);
  return inSpace ? <SpaceStage {...props} onLost={onLost} /> : <LineStage {...props} />;
}

function SpaceStage({
  thing,
  done,
  shown,
  colour,
  name,
  onLost,
}: FoldStageProps & { readonly onLost: () => void }) {
  const ruler = useRuler();
  const theme = useWorkbook((state) => state.settings.theme);
  const help = useId();
  const canvas = useRef<HTMLCanvasElement>(null);
  const [scene, setScene] = useState<FoldScene | null>(null);
  const [labels, setLabels] = useState(NO_LABELS);
  const numbers = useRef<SVGSVGElement>(null);
  const onDrawn = useCallback(
    (drawn: readonly RulerLabel[]) => moveLabels(numbers.current, drawn, setLabels),
    [],
  );

  useEffect(() => {
    const target = canvas.current;
    if (!target) return;
    let made: FoldScene | null = null;
    let wanted = true;
    const watch = new ResizeObserver(() => made?.resize());
    target.addEventListener('webglcontextlost', onLost);
    void import('../../ui/folded/space/fold-scene').then(({ makeScene }) => {
      if (!wanted) return;
      made = makeScene(target, thing, coloursOf(target, colour), onDrawn);
      watch.observe(target);
      setScene(made);
    }, onLost);
    return () => {
      wanted = false;
      watch.disconnect();
      target.removeEventListener('webglcontextlost', onLost);
      made?.dispose();
      setScene(null);
    };
  }, [thing, colour, theme, onLost, onDrawn]);

  useEffect(() => scene?.fold(done), [scene, done]);
  useEffect(() => scene?.show(shown), [scene, shown]);

  const onKeyDown = (event: KeyboardEvent) => {
    const act = scene && actOf(scene, event);
    if (!act) return;
    event.preventDefault();
    act();
  };
  return (
    <figure className="fold-stage">
      <canvas
        ref={canvas}
        role="img"
        aria-label={name}
        aria-describedby={help}
        tabIndex={0}
        className="fold-canvas"
        onKeyDown={onKeyDown}
      />
      <svg ref={numbers} className="fold-labels" aria-hidden="true">
        {labels.map(({ of, mm, x, y }) => (
          <text key={of} x={x} y={y}>
            {lengthWords(ticksOf(mm), ruler)}
          </text>
        ))}
      </svg>
      <StageFoot scene={scene} colour={colour} help={help} />
    </figure>
  );
}

interface StageFootProps {
  readonly scene: FoldScene | null;
  readonly colour: string | undefined;
  readonly help: string;
}

/** How it is turned, the buttons that come closer, and which face has which color. */
function StageFoot({ scene, colour, help }: StageFootProps) {
  const words = usePageWords().fold;
  const colours = sidesOf(colour);
  return (
    <figcaption className="fold-foot">
      <span id={help}>{words.turnHelp}</span>
      <span className="fold-tools screen-only">
        <IconButton label={words.closer} icon={<Plus />} onClick={() => scene?.closer(1.25)} />
        <IconButton label={words.farther} icon={<Minus />} onClick={() => scene?.closer(0.8)} />
        <IconButton label={words.asAtFirst} icon={<Maximize />} onClick={() => scene?.reset()} />
      </span>
      <span className="fold-sides">
        <Side colour={colours.outside} />
        {words.outsideFace}
        <Side colour={colours.inside} />
        {words.insideFace}
      </span>
    </figcaption>
  );
}

/** Numbers of rulers that stay are moved where they stand; only others are drawn again, so that turning and folding do not render the page. */
function moveLabels(
  numbers: SVGSVGElement | null,
  drawn: readonly RulerLabel[],
  setLabels: (change: (before: readonly RulerLabel[]) => readonly RulerLabel[]) => void,
): void {
  drawn.forEach(({ x, y }, at) => {
    const number = numbers?.children.item(at);
    number?.setAttribute('x', String(x));
    number?.setAttribute('y', String(y));
  });
  const isSame = (before: readonly RulerLabel[]) =>
    before.length === drawn.length &&
    before.every(({ of, mm }, at) => {
      const now = drawn[at];
      return now?.of === of && now.mm === mm;
    });
  setLabels((before) => (isSame(before) ? before : drawn));
}

function Side({ colour }: { colour: string }) {
  return (
    <svg className="fold-side" viewBox="0 0 20 20" aria-hidden="true">
      <rect width="20" height="20" fill={colour} />
    </svg>
  );
}

const TURN_DEG = 15;

/** In the order of the keys: left, right, up, down. */
const TURNS: readonly (readonly [around: number, up: number])[] = [
  [-TURN_DEG, 0],
  [TURN_DEG, 0],
  [0, TURN_DEG],
  [0, -TURN_DEG],
];

function actOf(scene: FoldScene, event: KeyboardEvent): (() => void) | null {
  const [act, nth = 0] = keyIn('space', event) ?? [];
  if (act === 'nearer') return () => scene.closer(1.25);
  if (act === 'farther') return () => scene.closer(0.8);
  if (act === 'whole') return () => scene.reset();
  const turn = act === 'turn' ? TURNS[nth] : undefined;
  return turn ? () => scene.turn(...turn) : null;
}

/** The same state as a line drawing with its hidden lines taken out. */
function LineStage({ piece, done }: FoldStageProps) {
  const words = usePageWords().fold;
  const draw = useCallback(
    (space: Space) => {
      const acts = Math.min(Math.floor(done), piece.closing.length);
      const from = done >= piece.closing.length ? 'standing' : 'bench';
      const drawing = drawFolded(piece, { acts, part: done - acts, from, space });
      return { ...drawing, scale: 1, origin: [0, 0] as const };
    },
    [piece, done],
  );
  return (
    <figure className="fold-stage fold-stage-lines">
      <DrawingView draw={draw} still />
      <figcaption className="fold-foot">{words.drawnInstead}</figcaption>
    </figure>
  );
}

const sidesOf = (colour = PLAIN_CARD) => ({
  outside: colour,
  inside: mix(colour, '#ffffff', 0.55),
});

/** The card's own color on the outside, paler inside; lines and rulers in the ink of the page round the canvas. */
function coloursOf(canvas: Element, colour = PLAIN_CARD): SceneColours {
  const styles = getComputedStyle(canvas);
  const token = (name: string, otherwise: string) => styles.getPropertyValue(name).trim() || otherwise;
  return {
    ...sidesOf(colour),
    edge: mix(colour, '#ffffff', 0.3),
    ink: mix(colour, '#101418', 0.75),
    paper: mix(colour, '#2f5d4c', 0.45),
    arrow: mix(colour, '#101418', 0.85),
    thing: '#c98f5a',
    rule: token('--ink', '#22262a'),
  };
}

function mix(a: string, b: string, share: number): string {
  const part = (of: string, at: number) => Number.parseInt(of.slice(at, at + 2), 16);
  const mixed = [1, 3, 5].map((at) => Math.round(part(a, at) * (1 - share) + part(b, at) * share));
  return `#${mixed.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}
