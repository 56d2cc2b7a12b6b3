import { declarationOf } from '../styles/language/define';
import type { BoxStyle, Chosen, PieceSpec, Pieces, Quantity } from '../styles/language/types';
import { everyWay, piecesOf } from '../styles/shapes/choices';
import { STYLE_FORMAT, schemaFor } from './schema';

/** A style as the text of a file; or what of it is given as code, and has no formula that says the same. */
export type StyleWriting =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly onlyCode: readonly string[] };

/** Writes a style as a file that `readStyle` reads as the same style, add-ons and options with it. */
export function writeStyle(style: BoxStyle): StyleWriting {
  // a file names its panels itself: nothing was saved under other names
  const {
    version: _,
    pieces: __,
    sidesRenamed: ____,
    whole,
    quantities = {},
    angles = {},
    ...plain
  } = declarationOf(style);
  const onlyCode: string[] = [];
  const said = (of: Readonly<Record<string, Quantity>>) =>
    Object.fromEntries(
      Object.entries(of).map(([name, { of: ___, ...quantity }]) => {
        if (quantity.formula === undefined) onlyCode.push(name);
        return [name, quantity];
      }),
    );
  const saidPiece = ({ roomMm3: ___, ...piece }: PieceSpec) => {
    if (piece.roomFormula === undefined) onlyCode.push(`room of the ${piece.label.toLowerCase()}`);
    return piece;
  };
  const saidPieces = (pieces: Pieces) =>
    Object.fromEntries(Object.entries(pieces).map(([id, piece]) => [id, saidPiece(piece)]));
  const ways = waysOf(declarationOf(style), saidPieces);
  const written = {
    ...plain,
    ...(Object.keys(quantities).length === 0 ? {} : { quantities: said(quantities) }),
    ...(Object.keys(angles).length === 0 ? {} : { angles: said(angles) }),
    ...(ways.length === 1 ? { pieces: ways[0]?.pieces } : { ways }),
    ...(whole === undefined ? {} : { whole: saidPiece(whole) }),
  };
  const file = { format: STYLE_FORMAT, schema: schemaFor(written), style: written };
  return onlyCode.length === 0
    ? { ok: true, text: `${JSON.stringify(file, null, 1)}\n` }
    : { ok: false, onlyCode: [...new Set(onlyCode)] };
}

/** Every way of choosing its options, those together that give the same pieces. */
function waysOf(style: BoxStyle, said: (pieces: Pieces) => object) {
  const ways = new Map<string, { given: Chosen[]; pieces: object }>();
  for (const chosen of everyWay(style.options)) {
    const pieces = said(piecesOf(style, chosen));
    const key = JSON.stringify(pieces);
    const known = ways.get(key);
    if (known) known.given.push(chosen);
    else ways.set(key, { given: [chosen], pieces });
  }
  return [...ways.values()];
}
