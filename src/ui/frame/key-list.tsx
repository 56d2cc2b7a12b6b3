import type { KeyWords } from '../words/english/keys';
import { KEYS, type KeyPlace } from './keys';
import './key-list.css';

/** One key or several pressed together, as they are written on the keyboard. */
export const keyFace = (chord: string, faces: KeyWords['faces']): string =>
  chord
    .split(' ')
    .map((key) => faces[key] ?? key)
    .join(' ');

/** Every key by the place where it is heard, and what it does there. */
export function KeyList({ words }: { words: KeyWords }) {
  return (
    <div className="key-list">
      {(Object.keys(KEYS) as KeyPlace[]).map((place) => (
        <section key={place} aria-label={words.places[place]}>
          <h3>{words.places[place]}</h3>
          <dl>
            {Object.entries<readonly string[]>(KEYS[place]).map(([act, chords]) => (
              <div key={act}>
                <dt>
                  {chords.map((chord) => (
                    <kbd key={chord}>{keyFace(chord, words.faces)}</kbd>
                  ))}
                </dt>
                <dd>{(words.acts[place] as Readonly<Record<string, string>>)[act]}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </div>
  );
}
