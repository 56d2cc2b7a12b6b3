import { useCallback } from 'react';
import { type TracePicture, widthOf } from '../../core/trace';
import type { PlaceOfCard } from './use-tracing';

interface TraceUnderProps {
  readonly picture: TracePicture;
  readonly at: PlaceOfCard;
}

/** The picture itself: plain pixels, turned about its middle. */
export function TraceUnder({ picture, at }: TraceUnderProps) {
  const { place, widthPx, heightPx, bytes, type } = picture;
  // An address as long as it is shown; moving the picture makes no new one.
  const show = useCallback(
    (image: SVGImageElement | null) => {
      const address = URL.createObjectURL(new Blob([bytes], { type }));
      image?.setAttribute('href', address);
      return () => URL.revokeObjectURL(address);
    },
    [bytes, type],
  );
  const scale = at([1, 0])[0] - at([0, 0])[0];
  const [x, y] = at(place.middle);
  const width = widthOf(place, picture) * scale;
  const height = (width * heightPx) / widthPx;
  return (
    <image
      ref={show}
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
