import {
  type BufferGeometry,
  type ColorRepresentation,
  DoubleSide,
  EdgesGeometry,
  type Group,
  LineBasicMaterial,
  LineSegments,
  type Material,
  Mesh,
  MeshLambertMaterial,
  Shape,
  ShapeGeometry,
  Vector2,
} from 'three';
import type { PlacedOutline } from '../../../core/draw/net/decorate-map';
import type { SolidFace, SolidFigure } from '../../../core/fold/solid-figure';
import { contains } from '../../../core/plane';
import { type Ticks, toMm } from '../../../core/units';
import type { CardMesh } from './card-mesh';

/** How far what is stuck on stands off the card, mm: enough to be seen. */
const OFF = 0.25;

export interface StuckOn {
  show(shown: boolean): void;
  dispose(): void;
}

/** What is stuck on the panels, and on every panel's outside an arrow that points up once the box stands. */
export function stickOn(
  card: CardMesh,
  figure: SolidFigure,
  placed: readonly PlacedOutline[],
  across: Ticks,
  colours: { readonly paper: ColorRepresentation; readonly arrow: ColorRepresentation },
): { readonly dressing: StuckOn; readonly arrows: StuckOn } {
  const ink = new LineBasicMaterial({ color: colours.arrow });
  return { dressing: dress(), arrows: pointUp() };

  function dress(): StuckOn {
    const material = new MeshLambertMaterial({ color: colours.paper, side: DoubleSide });
    const made = placed.flatMap((piece, layer) => {
      // The map lies outside up: mirrored over the blank's width.
      const left = toMm(across) - toMm(piece.left) - toMm(piece.across);
      const bottom = toMm(piece.bottom);
      const [wide, high] = [toMm(piece.across), toMm(piece.up)];
      const at = figure.faces.findIndex((face) => contains(face.ring, [left + wide / 2, bottom + high / 2]));
      const panel = card.panels[at];
      if (!panel) return [];
      const shape = new Shape([
        new Vector2(left, bottom),
        new Vector2(left + wide, bottom),
        new Vector2(left + wide, bottom + high),
        new Vector2(left, bottom + high),
      ]);
      const z = piece.behind ? OFF : -figure.caliperMm - OFF * (layer + 1);
      const made = add(panel, new ShapeGeometry(shape), material, z);
      made.add(new LineSegments(new EdgesGeometry(made.geometry), ink));
      return [made];
    });
    return asOne(made, material, ink);
  }

  function pointUp(): StuckOn {
    const material = new MeshLambertMaterial({ color: colours.arrow, side: DoubleSide });
    const seen = new Set<string>();
    const made = figure.faces.flatMap((face, at) => {
      const panel = card.panels[at];
      if (!panel || seen.has(face.panel)) return [];
      seen.add(face.panel);
      return [add(panel, new ShapeGeometry(arrowOn(face)), material, -figure.caliperMm - OFF / 2)];
    });
    return asOne(made, material);
  }
}

function add(panel: Group, geometry: BufferGeometry, material: MeshLambertMaterial, z: number): Mesh {
  const mesh = new Mesh(geometry, material);
  mesh.position.z = z;
  panel.add(mesh);
  return mesh;
}

const asOne = (meshes: readonly Mesh[], ...materials: readonly Material[]): StuckOn => ({
  show(shown) {
    for (const mesh of meshes) mesh.visible = shown;
  },
  dispose() {
    for (const mesh of meshes) {
      mesh.geometry.dispose();
      for (const line of mesh.children) (line as LineSegments).geometry.dispose();
    }
    for (const material of materials) material.dispose();
  },
});

/** An arrow in the middle of a panel, a third as long as the panel is narrow. */
function arrowOn({ ring, up }: SolidFace): Shape {
  const xs = ring.map(([x]) => x);
  const ys = ring.map(([, y]) => y);
  const [wide, high] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  const [cx, cy] = [(Math.max(...xs) + Math.min(...xs)) / 2, (Math.max(...ys) + Math.min(...ys)) / 2];
  const long = Math.min(wide, high) / 3;
  const place = (side: number, ahead: number) =>
    new Vector2(cx + long * (up[0] * ahead - up[1] * side), cy + long * (up[1] * ahead + up[0] * side));
  return new Shape(
    [
      [0.08, -0.5],
      [0.08, 0.1],
      [0.25, 0.1],
      [0, 0.5],
      [-0.25, 0.1],
      [-0.08, 0.1],
      [-0.08, -0.5],
    ].map(([side = 0, ahead = 0]) => place(side, ahead)),
  );
}
