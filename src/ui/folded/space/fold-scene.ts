import {
  AmbientLight,
  DirectionalLight,
  PerspectiveCamera,
  Scene,
  Spherical,
  Vector3,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import { type FoldedThing, makeModel, type SceneColours, type Shown } from './box-model';
import type { Ruled } from './ruler-lines';

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
  const { acts, openUntil } = thing.figure;
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  renderer.localClippingEnabled = true;
  renderer.setPixelRatio(Math.min(2, devicePixelRatio));
  const box = makeModel(thing, colours);
  const scene = litScene().add(box.model);

  let done = acts;
  let shown: Shown = { contents: true, dressing: true, arrows: false, rulers: true, cutOpen: false };
  let waiting = 0;
  const eye = makeEye(canvas, ask);
  place();
  eye.reset();

  return {
    fold(next) {
      done = next;
      place();
    },
    show(next) {
      shown = next;
      box.cut(next.cutOpen);
      place();
    },
    turn: (aroundDeg, upDeg) => eye.turn(aroundDeg, upDeg),
    closer: (times) => eye.closer(times),
    reset: () => eye.reset(),
    resize() {
      renderer.setSize(canvas.clientWidth, canvas.clientHeight, false);
      eye.resize();
      draw();
    },
    dispose() {
      cancelAnimationFrame(waiting);
      eye.dispose();
      box.dispose();
      renderer.dispose();
    },
  };

  function showsThings(): boolean {
    return shown.contents && done >= openUntil;
  }

  function place(): void {
    eye.stepBackFrom(box.place(done, showsThings()));
  }

  function ask(): void {
    if (waiting === 0) waiting = requestAnimationFrame(draw);
  }

  function draw(): void {
    cancelAnimationFrame(waiting);
    waiting = 0;
    const rulers = shown.rulers && done >= acts;
    box.show({ contents: showsThings(), rulers, dressing: shown.dressing, arrows: shown.arrows });
    renderer.render(scene, eye.camera);
    onDrawn(rulers ? box.rulers.map(onCanvas) : []);
  }

  function onCanvas(rule: Ruled): RulerLabel {
    const at = new Vector3(...rule.label).applyMatrix4(box.upright.matrixWorld).project(eye.camera);
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

function litScene(): Scene {
  const sun = new DirectionalLight(0xffffff, 1.9);
  sun.position.set(-0.6, -0.9, 1.2);
  return new Scene().add(new AmbientLight(0xffffff, 1.5), sun);
}

/** The eye that goes round the middle of the box, by pointer, key or button. `moved` is told after every change. */
function makeEye(canvas: HTMLCanvasElement, moved: () => void) {
  const camera = new PerspectiveCamera(FIELD_DEG, 1, 1, 10_000);
  camera.up.set(0, 0, 1);
  const controls = new OrbitControls(camera, canvas);
  controls.enablePan = false;
  controls.enableZoom = false;
  // A finger that moves up or down moves the page; across, it turns the box.
  canvas.style.touchAction = 'pan-y';
  controls.addEventListener('change', moved);
  const away = { far: 1, times: 1 };

  /** three’s spherical angles run round y; here z is up. */
  function where(): Spherical {
    const { x, y, z } = camera.position;
    return new Spherical().setFromVector3(new Vector3(x, z, -y));
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
    moved();
  }

  return {
    camera,
    /** Far enough to see all that reaches this far from the middle. */
    stepBackFrom(reach: number): void {
      away.far = reach / Math.sin((FIELD_DEG * Math.PI) / 360);
      look(where());
    },
    turn(aroundDeg: number, upDeg: number): void {
      const at = where();
      at.theta += (aroundDeg * Math.PI) / 180;
      at.phi = Math.min(Math.PI - 0.05, Math.max(0.05, at.phi - (upDeg * Math.PI) / 180));
      look(at);
    },
    closer(times: number): void {
      away.times = Math.min(4, Math.max(0.4, away.times * times));
      look(where());
    },
    reset(): void {
      away.times = 1;
      look(new Spherical(1, TIP, AROUND));
    },
    resize(): void {
      camera.aspect = canvas.clientWidth / Math.max(1, canvas.clientHeight);
      camera.updateProjectionMatrix();
      look(where());
    },
    dispose: () => controls.dispose(),
  };
}
