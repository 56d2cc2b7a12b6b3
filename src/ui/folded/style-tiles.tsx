import type { ReactNode } from 'react';
import type { BoxStyle } from '../../core/styles';
import { useIdleSlices } from '../frame/idle-slices';
import { useSay } from '../words';
import { StylePicture } from './style-picture';
import './style-tiles.css';

interface StyleTilesProps {
  readonly styles: readonly BoxStyle[];
  readonly current?: string;
  readonly onChoose: (id: string) => void;
  /** Shows what each is good for, and what to watch out for. */
  readonly explained?: boolean;
  /** Left out of the list for now; their pictures stay. */
  readonly isHidden?: (id: string) => boolean;
  /** A line more on a tile. */
  readonly extra?: (id: string) => ReactNode;
}

const drawn = () => true;

/** Box styles as pictures of the folded box; one press chooses. The pictures are drawn one by one while the page is idle. */
export function StyleTiles({
  styles,
  current,
  onChoose,
  explained = false,
  isHidden,
  extra,
}: StyleTilesProps) {
  const say = useSay();
  const pictures = useIdleSlices(styles, drawn).length;
  return (
    <ul className={explained ? 'style-tiles style-tiles-explained' : 'style-tiles'}>
      {styles.map((style, at) => (
        <li key={style.id} hidden={isHidden?.(style.id) ?? false}>
          <button
            type="button"
            className="style-tile"
            aria-pressed={style.id === current}
            onClick={() => onChoose(style.id)}
          >
            {at < pictures ? <StylePicture style={style} told /> : <span className="style-picture" />}
            <span className="style-tile-words">
              <strong>{say(style.name)}</strong>
              {explained && (
                <>
                  <span>{say(style.goodFor)}</span>
                  <span className="soft">{say(style.watchOut)}</span>
                </>
              )}
              {extra?.(style.id)}
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}
