import type { LineChoice, OwnLine } from '../../core/net';
import { usePickingWords } from '../../ui/words/picking-words';

const KINDS: readonly LineChoice[] = ['V', 'M', 'F', 'C'];

interface OpenLinesProps {
  readonly open: readonly OwnLine[];
  readonly said: Readonly<Record<string, LineChoice>>;
  readonly onSay: (name: string, choice: LineChoice) => void;
}

/** The lines of which the file does not say what they are, one question each. */
export function OpenLines({ open, said, onSay }: OpenLinesProps) {
  const words = usePickingWords();
  return (
    <div className="open-lines">
      <p>{words.asks}</p>
      <ol>
        {open.map(({ name, a, b }) => {
          const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
          return (
            <li key={name}>
              <fieldset className="open-line">
                <legend>{words.line(name, `${Number(length.toPrecision(4))}`)}</legend>
                {KINDS.map((kind) => (
                  <label key={kind} className="wish">
                    <input
                      type="radio"
                      name={`line-${name}`}
                      checked={said[name] === kind}
                      onChange={() => onSay(name, kind)}
                    />
                    {words.kinds[kind]}
                  </label>
                ))}
              </fieldset>
            </li>
          );
        })}
      </ol>
    </div>
  );
}
