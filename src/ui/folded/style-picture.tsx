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

/** The folded box of a style at its usual sizes, on the mat. */
export function StylePicture({ style }: { style: BoxStyle }) {
  return (
    <span className="style-picture">
      <FoldedPicture net={defaultNet(style)} />
    </span>
  );
}
