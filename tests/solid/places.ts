import { Matrix4, Vector3 } from 'three';
import type { PieceNet } from '../../src/core/net';
import { toMm } from '../../src/core/units/ticks';

/** A flat face where it stands when closed, card without thickness: its place, and the way its inside looks. mm. */
export interface Stand {
  readonly place: Matrix4;
  readonly inside: Vector3;
}

const toward = new Vector3(0, 0, 1);

/** A root of four corners whose first side runs at 45 degrees over its blank is turned until that side runs to the right. */
export function levelTurn({ faces }: Pick<PieceNet, 'faces'>): Matrix4 {
  const [a, b, ...others] = faces[0]?.ring ?? [];
  const angle = a && b && others.length === 2 ? Math.atan2(b.y - a.y, b.x - a.x) : 0;
  const isCornerwise = Math.abs(Math.abs(Math.sin(2 * angle)) - 1) < 1e-12;
  return isCornerwise ? new Matrix4().makeRotationZ(-angle) : new Matrix4();
}

/** Every face turned about the hinges of its net by their angles (npm `three`), the root on the bench, inside up. */
export function standsOf({ faces, hinges }: PieceNet): Stand[] {
  const places = faces.map(() => levelTurn({ faces }));
  for (const { parent, child, a, b, restDeg } of hinges) {
    const foot = new Vector3(toMm(a.x), toMm(a.y), 0);
    const axis = new Vector3(toMm(b.x), toMm(b.y), 0).sub(foot).normalize();
    const turn = new Matrix4().makeRotationAxis(axis, (-restDeg * Math.PI) / 180);
    const [there, back] = [1, -1].map((way) =>
      new Matrix4().makeTranslation(way * foot.x, way * foot.y, way * foot.z),
    ) as [Matrix4, Matrix4];
    places[child] = (places[parent] ?? new Matrix4()).clone().multiply(there).multiply(turn).multiply(back);
  }
  return places.map((place) => ({ place, inside: toward.clone().transformDirection(place) }));
}

export const pointOn = ({ place }: Stand, at: { readonly x: number; readonly y: number }): Vector3 =>
  new Vector3(at.x / 320, at.y / 320, 0).applyMatrix4(place);
