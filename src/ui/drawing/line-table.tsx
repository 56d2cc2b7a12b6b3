import { Fragment, useId, useState } from 'react';
import type { LineRow } from '../../core/draw/net/net-table';
import type { Ticks } from '../../core/units';
import type { Reason } from '../../core/units/reason';
import { lengthWords, useRuler } from '../fields/measure';
import { classNames } from '../frame/class-names';
import { WhyRow, WhyTurn } from '../frame/why-row';
import { useWords } from '../words';
import { InkSample } from './ink-sample';
import { isRowLit, type Lit } from './lit';
import './line-table.css';

interface LineTableProps {
  readonly rows: readonly LineRow[];
  readonly lit: Lit;
  readonly onLight: (lit: Lit) => void;
  readonly caption: string;
  /** Where a line's place comes from. */
  readonly why: (row: LineRow) => readonly Reason[];
}

/** Every line of the net as a row, distances added up from one edge so that nobody adds at the bench; lights up with the drawing, and opens to how it comes about. */
export function LineTable({ rows, lit, onLight, caption, why }: LineTableProps) {
  const id = useId();
  const [open, setOpen] = useState<string | null>(null);
  const ruler = useRuler();
  const words = useWords();
  const number = (length: Ticks) => lengthWords(length, ruler).replace(` ${ruler.unit}`, '');
  const span = ([a, b]: readonly [Ticks, Ticks]) =>
    a === b ? number(a) : `${number(Math.min(a, b) as Ticks)} – ${number(Math.max(a, b) as Ticks)}`;

  return (
    <div className="line-table-box">
      <table className="line-table">
        <caption>
          {caption}{' '}
          <span className="soft">
            {words.drawing.allIn(ruler.unit)}. {words.working.pressLine}
          </span>
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
            const isOpen = open === row.key;
            return (
              <Fragment key={row.key}>
                <tr
                  className={classNames(isRowLit(lit, row) && 'line-table-lit')}
                  onPointerEnter={() => onLight(light)}
                  onPointerLeave={() => onLight(null)}
                >
                  <th scope="row" className="line-table-cell line-table-first">
                    <button
                      type="button"
                      className="line-table-line"
                      aria-expanded={isOpen}
                      aria-controls={isOpen ? id : undefined}
                      onClick={() => setOpen(isOpen ? null : row.key)}
                      onFocus={() => onLight(light)}
                      onBlur={() => onLight(null)}
                    >
                      <WhyTurn />
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
                {isOpen && <WhyRow id={id} columns={4} why={why(row)} />}
              </Fragment>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
