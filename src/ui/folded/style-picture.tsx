import type { BoxNet } from '../../core/net';
import { layNet } from '../../core/net';
import type { BoxStyle } from '../../core/styles';
import { FoldedPicture } from './folded-picture';

/** Light cardstock, for pictures. source: common practice, no source. */
const CALIPER_UM = 300;
const nets = new WeakMap<BoxStyle, BoxNet>();

/** A style's net at its own default sizes; laid once. */
function defaultNet(style: BoxStyle): BoxNet {
  const known = nets.get(style) ?? layNet(style, { sizes: {}, caliperUm: CALIPER_UM });
  nets.set(style, known);
  return known;
}

interface StylePictureProps {
  readonly style: BoxStyle;
  /** Tall boxes with a lid look alike from above: their bottom as well. */
  readonly told?: boolean;
}

/** The folded box of a style at its usual sizes, on the mat. */
export function StylePicture({ style, told = false }: StylePictureProps) {
  const alike = told && style.traits.includes('lid') && style.traits.includes('tall');
  return (
    <span className={alike ? 'style-picture style-picture-told' : 'style-picture'}>
      <FoldedPicture net={defaultNet(style)} />
      {alike && <FoldedPicture net={defaultNet(style)} bottom />}
    </span>
  );
}
