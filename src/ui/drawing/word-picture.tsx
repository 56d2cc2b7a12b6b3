import { useId } from 'react';
import { type PicturedWord, pictureOfWord, WORD_PICTURE_MM } from '../../core/draw/strokes/word-pictures';
import type { At } from '../../core/plane';
import { DrawnWords, HatchPatterns, InkedMarks } from './drawing-marks';
import { PX_PER_MM } from './ink-on-screen';

const NONE: readonly string[] = [];
const ignore = () => undefined;
const { width, height } = WORD_PICTURE_MM;
const flip = ([x, y]: At): At => [x, height - y];

/** What a word of the trade looks like; `shows` says it for those who cannot see it. */
export function WordPicture({ word, name, shows }: { word: PicturedWord; name: string; shows: string }) {
  const id = useId();
  const marks = pictureOfWord(word);
  return (
    <svg
      className="word-picture"
      role="img"
      aria-labelledby={`${id}-name`}
      aria-describedby={`${id}-shows`}
      viewBox={`0 0 ${width} ${height}`}
      width={width * PX_PER_MM}
      height={height * PX_PER_MM}
    >
      <title id={`${id}-name`}>{name}</title>
      <desc id={`${id}-shows`}>{shows}</desc>
      <HatchPatterns name={id} />
      <InkedMarks marks={marks} flip={flip} name={id} lit={NONE} />
      <DrawnWords marks={marks} flip={flip} lit={NONE} onLight={ignore} />
    </svg>
  );
}
