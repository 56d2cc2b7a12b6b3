import {
  Box3,
  BufferGeometry,
  Float32BufferAttribute,
  Group,
  LineBasicMaterial,
  LineSegments,
  type Material,
  Mesh,
  type Object3D,
  Plane,
  Quaternion,
  Vector3,
} from 'three';
import type { PlacedOutline } from '../../../core/draw/net/decorate-map';
import type { LaidThing } from '../../../core/draw/sheet/arrangement-drawing';
import type { Extent, SolidFigure } from '../../../core/fold/solid-figure';
import type { Ticks } from '../../../core/units';
import { type CardColours, makeCard, rotationOf } from './card-mesh';
import { rulerLines } from './ruler-lines';
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

/** The card with what is in it, on it and round it, as one thing in space: folded, shown in part, cut open. */
export function makeModel(thing: FoldedThing, colours: SceneColours) {
  const { figure } = thing;
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

  const ofCard = figure.faces.flatMap(({ ring }, at) =>
    ring.map(([x, y]) => cornerOf(card.panels[at]!, new Vector3(x, y, 0))),
  );
  const ofContents = contents.corners.map((corner) => cornerOf(contents.group, corner));
  const span = new Box3();
  const middle = new Vector3();
  const stood = new Quaternion().setFromRotationMatrix(standing);
  const lying = new Quaternion();
  const half = new Plane(new Vector3(0, 1, 0), 0);

  return {
    model,
    upright,
    rulers,

    /** Folds the card after so many acts, and stands it up while it closes. Gives how far its farthest corner is from its middle. */
    place(acts: number, withContents: boolean): number {
      card.place(figure.posesAt(acts));
      const closed = figure.acts === 0 ? 1 : acts / figure.acts;
      model.quaternion.slerpQuaternions(lying, stood, smooth(Math.max(0, 2 * closed - 1)));
      model.position.set(0, 0, 0);
      model.updateMatrixWorld(true);
      const seen = withContents ? [ofCard, ofContents] : [ofCard];
      span.makeEmpty();
      for (const corners of seen)
        for (const { at, of, flat } of corners)
          span.expandByPoint(at.copy(flat).applyMatrix4(of.matrixWorld));
      span.getCenter(middle);
      let reach = 0;
      for (const corners of seen)
        for (const { at } of corners) reach = Math.max(reach, at.distanceTo(middle));
      model.position.copy(middle).negate();
      model.updateMatrixWorld(true);
      return reach;
    },

    /** Cuts away what lies in front of the middle, except the rulers. */
    cut(open: boolean): void {
      model.traverse((part) => {
        if (part === ruled || !(part instanceof Mesh || part instanceof LineSegments)) return;
        (part.material as Material).clippingPlanes = open ? [half] : [];
      });
    },

    show(
      seen: { readonly contents: boolean; readonly rulers: boolean } & Pick<Shown, 'dressing' | 'arrows'>,
    ): void {
      contents.group.visible = seen.contents;
      ruled.visible = seen.rulers;
      stuck.dressing.show(seen.dressing);
      stuck.arrows.show(seen.arrows);
    },

    dispose(): void {
      for (const part of [card, stuck.dressing, stuck.arrows, contents]) part.dispose();
      ruled.geometry.dispose();
      ruled.material.dispose();
    },
  };
}

/** A corner of something, and where it has got to: kept, so that a frame makes nothing new. */
const cornerOf = (of: Object3D, flat: Vector3) => ({ of, flat, at: new Vector3() });

const smooth = (part: number): number => part * part * (3 - 2 * part);

function lines(numbers: readonly number[], color: string): LineSegments<BufferGeometry, LineBasicMaterial> {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new Float32BufferAttribute([...numbers], 3));
  return new LineSegments(geometry, new LineBasicMaterial({ color }));
}
