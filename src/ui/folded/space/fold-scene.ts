import {
  AmbientLight,
  Box3,
  BufferGeometry,
  DirectionalLight,
  Float32BufferAttribute,
  Group,
  LineBasicMaterial,
  LineSegments,
  type Material,
  Mesh,
  type Object3D,
  PerspectiveCamera,
  Plane,
  Quaternion,
  Scene,
  Spherical,
  Vector3,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import type { PlacedOutline } from '../../../core/draw/net/decorate-map';
import type { LaidThing } from '../../../core/draw/sheet/arrangement-drawing';
import type { Extent, SolidFigure } from '../../../core/fold/solid-figure';
import type { Ticks } from '../../../core/units';
import { type CardColours, makeCard, rotationOf } from './card-mesh';
import { type Ruled, rulerLines } from './ruler-lines';
import { stickOn } from './stuck-on-mesh';
import { makeThings } from './things-mesh';

/** What is to be seen; none of it changes while the box is folded and turned. */
export interface FoldedThing {
  readonly figure: SolidFigure;
  readonly across: Ticks;
  readonly outside: Extent;
  readonly room: Extent;
  readonly things: readonly LaidThing[];
  readonly thingsSize: readonly [number, number, number];
  readonly placed: readonly PlacedOutline[];
}

export interface SceneColours extends CardColours {
  readonly paper: string;
  readonly arrow: string;
  readonly thing: string;
  readonly rule: string;
}

export interface Shown {
  readonly contents: boolean;
  readonly dressing: boolean;
  readonly arrows: boolean;
  readonly rulers: boolean;
  readonly cutOpen: boolean;
}

/** Where a ruler's middle is on the canvas, in its CSS pixels. */
export interface RulerLabel extends Ruled {
  readonly x: number;
  readonly y: number;
}

export interface FoldScene {
  /** `done`: acts of closing, a part of the next one counted as a part. */
  fold(done: number): void;
  show(shown: Shown): void;
  turn(aroundDeg: number, upDeg: number): void;
  closer(times: number): void;
  reset(): void;
  resize(): void;
  dispose(): void;
}

const FIELD_DEG = 26;
/** From the right and from a standing maker's eyes. */
const AROUND = Math.PI / 2 - 0.56;
const TIP = 1.13;
/** Air round the card, so that the rulers’ numbers have a place. */
const ROOM = 1.25;
/** Half of the longest number, so that none runs off the canvas; px. */
const HALF_LABEL = 48;

/** Draws a piece of card in space, only when something changed. `onDrawn` is told after every picture. */
export function makeScene(
  canvas: HTMLCanvasElement,
  thing: FoldedThing,
  colours: SceneColours,
  onDrawn: (labels: readonly RulerLabel[]) => void,
): FoldScene {
  const { figure } = thing;
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  renderer.localClippingEnabled = true;
  renderer.setPixelRatio(Math.min(2, devicePixelRatio));
  const scene = new Scene();
  const camera = new PerspectiveCamera(FIELD_DEG, 1, 1, 10_000);
  camera.up.set(0, 0, 1);
  const sun = new DirectionalLight(0xffffff, 1.9);
  sun.position.set(-0.6, -0.9, 1.2);
  scene.add(new AmbientLight(0xffffff, 1.5), sun);

  const card = makeCard(figure, colours);
  const stuck = stickOn(card, figure, thing.placed, thing.across, colours);
  const contents = makeThings(thing.things, thing.thingsSize, thing.room, { ...colours });
  const rulers = rulerLines(thing.outside);
  const ruled = lines(
    rulers.flatMap(({ ends }) => ends.flat()),
    colours.rule,
  );
  // The net's frame; what stands upright in it is turned back, so that it is upright once the box is.
  const model = new Group();
  const upright = new Group();
  const standing = rotationOf(figure);
  upright.matrixAutoUpdate = false;
  upright.matrix.copy(standing).transpose();
  upright.add(contents.group, ruled);
  model.add(card.group, upright);
  scene.add(model);

  // Every corner of the card and then of what lies in it, and where it has got to: kept, so that a frame makes nothing new.
  const cornerOf = (of: Object3D, flat: Vector3) => ({ of, flat, at: new Vector3() });
  const corners = [
    ...figure.faces.flatMap(({ ring }, at) =>
      ring.map(([x, y]) => cornerOf(card.panels[at]!, new Vector3(x, y, 0))),
    ),
    ...contents.corners.map((corner) => cornerOf(contents.group, corner)),
  ];
  const span = new Box3();
  const middle = new Vector3();
  const stood = new Quaternion().setFromRotationMatrix(standing);
  const lying = new Quaternion();
  const half = new Plane(new Vector3(0, 1, 0), 0);
  const controls = new OrbitControls(camera, canvas);
  controls.enablePan = false;
  controls.enableZoom = false;
  // A finger that moves up or down moves the page; across, it turns the box.
  canvas.style.touchAction = 'pan-y';
  controls.addEventListener('change', ask);

  let done = 0;
  let shown: Shown = { contents: true, dressing: true, arrows: false, rulers: true, cutOpen: false };
  let waiting = 0;
  const away = { far: 1, times: 1 };
  done = figure.acts;
  place(done);
  reset();

  return {
    fold(next) {
      done = next;
      place(next);
      look(new Spherical().setFromVector3(fromTarget()));
    },
    show(next) {
      shown = next;
      cutOpen(next.cutOpen ? [half] : []);
      place(done);
      look(new Spherical().setFromVector3(fromTarget()));
    },
    turn(aroundDeg, upDeg) {
      const at = new Spherical().setFromVector3(fromTarget());
      at.theta += (aroundDeg * Math.PI) / 180;
      at.phi = Math.min(Math.PI - 0.05, Math.max(0.05, at.phi - (upDeg * Math.PI) / 180));
      look(at);
    },
    closer(times) {
      away.times = Math.min(4, Math.max(0.4, away.times * times));
      look(new Spherical().setFromVector3(fromTarget()));
    },
    reset,
    resize() {
      const { clientWidth, clientHeight } = canvas;
      renderer.setSize(clientWidth, clientHeight, false);
      camera.aspect = clientWidth / Math.max(1, clientHeight);
      camera.updateProjectionMatrix();
      look(new Spherical().setFromVector3(fromTarget()));
      draw();
    },
    dispose() {
      cancelAnimationFrame(waiting);
      controls.dispose();
      for (const part of [card, stuck.dressing, stuck.arrows, contents]) part.dispose();
      ruled.geometry.dispose();
      ruled.material.dispose();
      renderer.dispose();
    },
  };

  /** Cuts away what lies in front of the middle, except the rulers. */
  function cutOpen(planes: readonly Plane[]): void {
    model.traverse((part) => {
      if (part === ruled || !(part instanceof Mesh || part instanceof LineSegments)) return;
      (part.material as Material).clippingPlanes = [...planes];
    });
  }

  function showsThings(): boolean {
    return shown.contents && done >= figure.openUntil;
  }

  /** Folds the card, and stands it up while it closes. */
  function place(at: number): void {
    card.place(figure.posesAt(at));
    const closed = figure.acts === 0 ? 1 : at / figure.acts;
    model.quaternion.slerpQuaternions(lying, stood, smooth(Math.max(0, 2 * closed - 1)));
    model.position.set(0, 0, 0);
    model.updateMatrixWorld(true);
    const seen = showsThings() ? corners.length : corners.length - contents.corners.length;
    span.makeEmpty();
    for (let i = 0; i < seen; i++) {
      const { at, of, flat } = corners[i]!;
      span.expandByPoint(at.copy(flat).applyMatrix4(of.matrixWorld));
    }
    span.getCenter(middle);
    let reach = 0;
    for (let i = 0; i < seen; i++) reach = Math.max(reach, corners[i]!.at.distanceTo(middle));
    model.position.copy(middle).negate();
    model.updateMatrixWorld(true);
    away.far = reach / Math.sin((FIELD_DEG * Math.PI) / 360);
  }

  function fromTarget(): Vector3 {
    // three’s spherical angles run round y; here z is up.
    const { x, y, z } = camera.position;
    return new Vector3(x, z, -y);
  }

  function look(at: Spherical): void {
    at.radius = (away.far * ROOM) / (away.times * Math.min(1, camera.aspect));
    const { x, y, z } = new Vector3().setFromSpherical(at);
    camera.position.set(x, -z, y);
    // As near to the card as can be: layers of it lie a fraction of a millimeter apart.
    camera.near = at.radius / 10;
    camera.far = at.radius * 4;
    camera.updateProjectionMatrix();
    camera.lookAt(0, 0, 0);
    controls.update();
    ask();
  }

  function reset(): void {
    away.times = 1;
    look(new Spherical(1, TIP, AROUND));
  }

  function ask(): void {
    if (waiting === 0) waiting = requestAnimationFrame(draw);
  }

  function draw(): void {
    cancelAnimationFrame(waiting);
    waiting = 0;
    const isClosed = done >= figure.acts;
    contents.group.visible = showsThings();
    ruled.visible = shown.rulers && isClosed;
    stuck.dressing.show(shown.dressing);
    stuck.arrows.show(shown.arrows);
    renderer.render(scene, camera);
    onDrawn(ruled.visible ? rulers.map(onCanvas) : []);
  }

  function onCanvas(rule: Ruled): RulerLabel {
    const at = new Vector3(...rule.label).applyMatrix4(upright.matrixWorld).project(camera);
    return {
      ...rule,
      x: Math.min(
        canvas.clientWidth - HALF_LABEL,
        Math.max(HALF_LABEL, ((at.x + 1) / 2) * canvas.clientWidth),
      ),
      y: ((1 - at.y) / 2) * canvas.clientHeight,
    };
  }
}

const smooth = (part: number): number => part * part * (3 - 2 * part);

function lines(numbers: readonly number[], color: string): LineSegments<BufferGeometry, LineBasicMaterial> {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute([...numbers], 3));
  return new LineSegments(geometry, new LineBasicMaterial({ color }));
}
