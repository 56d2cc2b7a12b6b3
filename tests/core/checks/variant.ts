import type { Finding } from '../../../src/core/checks';
import { type BoxNet, layNet } from '../../../src/core/net';
import type { BoxStyle, PanelSpec, PieceSpec } from '../../../src/core/styles';
import { evaluateForm, formOf, piecesOf } from '../../../src/core/styles';
import { sayReason } from '../../../src/core/units/reason';

/** A style with one piece changed, to see a check trip; its options stay at their defaults. */
export function withPiece(
  style: BoxStyle,
  id: string,
  change: (piece: PieceSpec) => Partial<PieceSpec>,
): BoxStyle {
  const pieces = piecesOf(style);
  const piece = pieces[id];
  if (piece === undefined) throw new RangeError(`no piece ${id}`);
  return { ...style, pieces: { ...pieces, [id]: { ...piece, ...change(piece) } } };
}

/** A style with one panel changed. */
export const withPanel = (style: BoxStyle, id: string, panel: string, change: Partial<PanelSpec>): BoxStyle =>
  withPiece(style, id, ({ panels }) => ({
    panels: { ...panels, [panel]: { ...panels[panel], ...change } as PanelSpec },
  }));

/** What a finding says, lengths in ticks. */
export const sayIt = (finding: Finding): string => sayReason(finding, { length: String, money: String });

/** A box by sizes as a maker writes them. */
export const boxOf = (
  style: BoxStyle,
  sizes: Readonly<Record<string, string>> = {},
  caliperUm = 305,
): BoxNet =>
  layNet(style, {
    sizes: Object.fromEntries(
      Object.entries(sizes).map(([name, text]) => [name, evaluateForm(formOf(text), {})]),
    ),
    caliperUm,
  });
