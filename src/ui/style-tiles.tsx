import type { BoxStyle } from '../core/styles';
import { StylePicture } from './style-picture';
import './style-tiles.css';

interface StyleTilesProps {
  readonly styles: readonly BoxStyle[];
  readonly current?: string;
  readonly onChoose: (id: string) => void;
  /** Shows what each is good for, and what to watch out for. */
  readonly explained?: boolean;
}

/** Box styles as pictures of the folded box; one press chooses. */
export function StyleTiles({ styles, current, onChoose, explained = false }: StyleTilesProps) {
  return (
    <ul className={explained ? 'style-tiles style-tiles-explained' : 'style-tiles'}>
      {styles.map((style) => (
        <li key={style.id}>
          <button
            type="button"
            className="style-tile"
            aria-pressed={style.id === current}
            onClick={() => onChoose(style.id)}
          >
            <StylePicture style={style} />
            <span className="style-tile-words">
              <strong>{style.name}</strong>
              {explained && (
                <>
                  <span>{style.goodFor}</span>
                  <span className="soft">{style.watchOut}</span>
                </>
              )}
            </span>
          </button>
        </li>
      ))}
    </ul>
  );
}
