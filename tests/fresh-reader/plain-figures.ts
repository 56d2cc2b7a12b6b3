/** Fractions as type, in plain figures: `3½` and `2¹⁵⁄₁₆` are `3 1/2` and `2 15/16`. */
export function plain(text: string): string {
  const figures = (raised: string, from: string) =>
    Array.from(raised)
      .map((one) => from.indexOf(one))
      .join('');
  return text
    .replace(/(\d)?([½¼¾⅛⅜⅝⅞])/g, (_, whole: string | undefined, part: string) => {
      const said = ['1/2', '1/4', '3/4', '1/8', '3/8', '5/8', '7/8']['½¼¾⅛⅜⅝⅞'.indexOf(part)];
      return `${whole === undefined ? '' : `${whole} `}${said}`;
    })
    .replace(
      /(\d)?([⁰¹²³⁴⁵⁶⁷⁸⁹]+)⁄([₀₁₂₃₄₅₆₇₈₉]+)/g,
      (_, whole: string | undefined, over: string, under: string) =>
        `${whole === undefined ? '' : `${whole} `}${figures(over, '⁰¹²³⁴⁵⁶⁷⁸⁹')}/${figures(under, '₀₁₂₃₄₅₆₇₈₉')}`,
    );
}
