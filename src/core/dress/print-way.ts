import { panelWays } from '../fold/panel-way';
import { asItStands } from '../net/lay-net';
import { savedName } from '../net/saved-panel';
import type { BoxNet, Face, PieceNet } from '../net/types';
import type { DressingPiece } from '../rows/dressing';
import { pieceWith } from './panel-size';

/** How a paper printed one way lies under a flat piece: its print runs up the piece, or across it. */
export type PrintWay = 'up' | 'across';

/** More than half-way turned. source: our own choice */
const TURNED = Math.SQRT1_2;

/** Whichever way is nearer. */
const wayOf = ([x, y]: readonly [number, number]): PrintWay => (Math.abs(y) >= Math.abs(x) ? 'up' : 'across');

/** Where print is seen on the closed box. */
const SEEN: readonly Face['role'][] = ['wall', 'roof', 'lid', 'cover'];

/** The face whose print should stand: the front, else the first upright wall, else the first of all. */
function mainFace({ faces }: PieceNet, ways: ReturnType<typeof panelWays>): number {
  const upright = (at: number) => ways[at]?.stands === 'upright';
  const front = faces.findIndex(({ panel }, at) => panel === 'front' && upright(at));
  if (front >= 0) return front;
  return Math.max(
    0,
    faces.findIndex(({ role }, at) => role === 'wall' && upright(at)),
  );
}

/** The way the print must run in the blank of a piece so that it stands on the front of the closed box. */
export function printWayOf(piece: PieceNet): PrintWay {
  const ways = panelWays(piece);
  return wayOf(ways[mainFace(piece, ways)]?.up ?? [0, 1]);
}

/** The same for a dressing piece: along its panel; up a band round the walls, along one that goes over the top. */
export function printWayOn(net: BoxNet, { fit, placed }: DressingPiece): PrintWay {
  if (fit?.rule === 'around') return (fit.way ?? 'walls') === 'walls' ? 'up' : 'across';
  const on = fit?.rule === 'on-panel' || fit?.rule === 'over-window' ? fit : placed;
  const piece = on && pieceWith(net, on.panel, on.part);
  if (!piece) return 'up';
  const named = savedName(net, piece.id, on.panel);
  const at = piece.faces.findIndex(({ panel }) => panel === named);
  return wayOf(panelWays(piece)[at]?.up ?? [0, 1]);
}

/** A panel on which the print does not stand as it does on the front. */
interface TurnedPrint {
  readonly panel: string;
  readonly lies: 'upside-down' | 'sideways';
}

/** Panels seen on the closed box where one-way print stands on its head or lies on its side; each panel once. */
export function turnedPrint(net: BoxNet): readonly TurnedPrint[] {
  const found = asItStands(net).flatMap((piece) => {
    const ways = panelWays(piece);
    const [x, y] = ways[mainFace(piece, ways)]?.up ?? [0, 1];
    return piece.faces.flatMap(({ panel, role }, at): TurnedPrint[] => {
      const way = ways[at];
      if (way?.stands !== 'upright' || !SEEN.includes(role)) return [];
      const along = x * way.up[0] + y * way.up[1];
      if (along >= TURNED) return [];
      return [{ panel, lies: along <= -TURNED ? 'upside-down' : 'sideways' }];
    });
  });
  return found.filter(({ panel }, at) => found.findIndex((each) => each.panel === panel) === at);
}
