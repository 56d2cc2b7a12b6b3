/** Sheets one box takes when each piece is cut from sheets of its own: Σ 1 / pieces a sheet. Null where a piece does not fit at all. */
export function sheetsEach<Piece>(
  pieces: readonly Piece[],
  countOf: (piece: Piece) => number,
): number | null {
  let sheets = 0;
  for (const piece of pieces) {
    const count = countOf(piece);
    if (count === 0) return null;
    sheets += 1 / count;
  }
  return sheets;
}
