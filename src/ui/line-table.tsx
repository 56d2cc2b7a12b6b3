import type { LineRow } from '../core/draw/net-table';
import type { Ticks } from '../core/units';
import { classNames } from './class-names';
import { InkSample } from './ink-sample';
import { isRowLit, type Lit } from './lit';
import { lengthWords, useRuler } from './measure';
import { useWords } from './words';
import './line-table.css';

interface LineTableProps {
  readonly rows: readonly LineRow[];
  readonly lit: Lit;
  readonly onLight: (lit: Lit) => void;
  readonly caption: string;
}

/** Every line of the net as a row, distances added up from one edge so that nobody adds at the bench; lights up with the drawing. */
export function LineTable({ rows, lit, onLight, caption }: LineTableProps) {
  const ruler = useRuler();
  const words = useWords();
  const number = (length: Ticks) => lengthWords(length, ruler).replace(` ${ruler.unit}`, '');
  const span = ([a, b]: readonly [Ticks, Ticks]) =>
    a === b ? number(a) : `${number(Math.min(a, b) as Ticks)} – ${number(Math.max(a, b) as Ticks)}`;

  return (
    <div className="line-table-box">
      <table className="line-table">
        <caption>
          {caption} <span className="soft">{words.drawing.allIn(ruler.unit)}</span>
        </caption>
        <thead>
          <tr>
            <th scope="col" className="line-table-head line-table-first">
              {words.drawing.line}
            </th>
            {[words.drawing.fromLeft, words.drawing.fromTop, words.drawing.gap].map((head) => (
              <th key={head} scope="col" className="line-table-head">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const light = { row: row.key, keys: row.lights };
            return (
              <tr
                key={row.key}
                className={classNames(isRowLit(lit, row) && 'line-table-lit')}
                onPointerEnter={() => onLight(light)}
                onPointerLeave={() => onLight(null)}
              >
                <th scope="row" className="line-table-cell line-table-first">
                  <button
                    type="button"
                    className="line-table-line"
                    onFocus={() => onLight(light)}
                    onBlur={() => onLight(null)}
                  >
                    <InkSample ink={row.ink} />
                    {words.lines[row.ink]}
                    {row.way === 'slanted' || row.way === 'curved' ? `, ${words.drawing[row.way]}` : ''}
                  </button>
                </th>
                <td className={classNames('line-table-cell', row.way === 'upright' && 'line-table-mark')}>
                  {span(row.fromLeft)}
                </td>
                <td className={classNames('line-table-cell', row.way === 'level' && 'line-table-mark')}>
                  {span(row.fromTop)}
                </td>
                <td className="line-table-cell">{row.gap === null ? '' : number(row.gap)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
