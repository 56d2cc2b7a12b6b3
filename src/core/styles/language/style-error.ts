/** A slip in a style's declaration, met when the module loads: the author's, never a maker's. */
export class StyleError extends Error {
  constructor(style: string, slip: string) {
    super(`style ${style}: ${slip}`);
    this.name = 'StyleError';
  }
}
