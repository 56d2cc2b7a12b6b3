import { type TracePicture, widthOf } from '../../core/trace';
import type { PlaceOfCard } from './use-tracing';

interface TraceUnderProps {
  readonly picture: TracePicture;
  readonly address: string;
  readonly at: PlaceOfCard;
}

/** The picture itself: plain pixels, turned about its middle. */
export function TraceUnder({ picture, address, at }: TraceUnderProps) {
  const { place, widthPx, heightPx } = picture;
  const scale = at([1, 0])[0] - at([0, 0])[0];
  const [x, y] = at(place.middle);
  const width = widthOf(place, picture) * scale;
  const height = (width * heightPx) / widthPx;
  return (
    <image
      href={address}
      x={-width / 2}
      y={-height / 2}
      width={width}
      height={height}
      opacity={place.strength}
      // the card’s y runs up, the drawing’s down
      transform={`translate(${x} ${y}) rotate(${-place.turnDeg})`}
      className="trace-picture"
    />
  );
}
