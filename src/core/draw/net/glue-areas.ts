import type { PieceNet, Point } from '../../net/types';
import type { At } from '../../plane';
import { areaMark } from '../strokes/marks';
import type { Mark } from '../strokes/types';
import type { FaceUp } from './net-lines';

/**
 * Where a joint's glue goes, seen from the face that lies up: on the tab's outside when the tab ends up inside the wall, on its inside
 * when it ends up outside. `glue-below` is the face turned away from the maker.
 */
export const glueInk = (lap: 'inside' | 'outside', faceUp: FaceUp): 'glue' | 'glue-below' =>
  (lap === 'inside') === (faceUp === 'inside') ? 'glue-below' : 'glue';

/** The letter on a glue area. */
export const GLUE_LETTER = { glue: 'G', 'glue-below': 'G↓' } as const;

/** The hatched tabs of a piece that already lies with `faceUp` up. */
export const drawGlue = (piece: PieceNet, faceUp: FaceUp, place: (point: Point) => At): Mark[] =>
  piece.joints.flatMap(({ tab, lap }) => {
    const face = piece.faces[tab];
    return face ? [areaMark(glueInk(lap, faceUp), face.ring.map(place))] : [];
  });
