import type { OwnLine } from '../../core/net';
import { usePickingWords } from '../../ui/words/picking-words';

interface OwnLinesProps {
  readonly lines: readonly OwnLine[];
  /** The lines that were asked about; they carry their number, answered or not. */
  readonly asked: readonly OwnLine[];
}

/** Share of the drawing's longer side: room round it, and the height of a number. */
const ROOM = 0.08;
const NUMBER = 0.055;

/** The lines of a file as they stand in it, frames side by side; cut wide, valley dashed, mountain dash-dot, the open ones numbered. */
export function OwnLines({ lines, asked }: OwnLinesProps) {
  const words = usePickingWords();
  const frames = [...new Set(lines.map(({ frame }) => frame))];
  const named = new Set(asked.map(({ name }) => name));
  return (
    <div className="own-lines">
      {frames.map((frame) => {
        const own = lines.filter((line) => line.frame === frame);
        const xs = own.flatMap(({ a, b }) => [a[0], b[0]]);
        const ys = own.flatMap(({ a, b }) => [-a[1], -b[1]]);
        const [left, top] = [Math.min(...xs), Math.min(...ys)];
        const [wide, high] = [Math.max(...xs) - left, Math.max(...ys) - top];
        const side = Math.max(wide, high, 1e-9);
        // Drawn on a thousand units, so that line widths do not hang on the file's unit.
        const place = ([x, y]: readonly [number, number]) =>
          [((x - left) / side) * 1000, ((-y - top) / side) * 1000] as const;
        const room = ROOM * 1000;
        return (
          <svg
            key={frame}
            role="img"
            aria-label={words.drawing}
            viewBox={`${-room} ${-room} ${(wide / side) * 1000 + 2 * room} ${(high / side) * 1000 + 2 * room}`}
          >
            {own.map(({ name, a, b, kind }) => {
              const [[x1, y1], [x2, y2]] = [place(a), place(b)];
              return (
                <line
                  key={name}
                  {...{ x1, y1, x2, y2 }}
                  className={`own-line own-line-${kind.toLowerCase()}${named.has(name) ? ' own-line-asked' : ''}`}
                />
              );
            })}
            {own
              .filter(({ name }) => named.has(name))
              .map(({ name, a, b }) => {
                const [[x1, y1], [x2, y2]] = [place(a), place(b)];
                return (
                  <text
                    key={name}
                    x={(x1 + x2) / 2}
                    y={(y1 + y2) / 2}
                    fontSize={NUMBER * 1000}
                    className="own-line-number"
                  >
                    {name}
                  </text>
                );
              })}
          </svg>
        );
      })}
    </div>
  );
}
