import { useRef } from 'react';
import type { EasyRow } from '../../core/fit';
import { usePaneSize } from '../../ui/drawing/pane-size';
import { classNames } from '../../ui/frame/class-names';
import { usePageWords } from '../../ui/words';
import './marks-plot.css';

interface Point {
  readonly row: EasyRow;
  readonly label: string;
  readonly inUse: boolean;
}

interface MarksPlotProps {
  readonly points: readonly Point[];
  readonly lit: number | null;
  readonly onLight: (point: number | null) => void;
  readonly onTake: (row: EasyRow) => void;
}

const EDGE = { left: 58, right: 30, top: 30, bottom: 52 }; // room of the words round the plot, px
const TOUCH = 44; // px, a fingertip

/** Roughness against paper, a point a row; every point is a button that the keyboard reaches in the table's order. */
export function MarksPlot({ points, lit, onLight, onTake }: MarksPlotProps) {
  const words = usePageWords().marks;
  const svg = useRef<SVGSVGElement>(null);
  const { width, height } = usePaneSize(svg);
  const fitting = points.flatMap(({ row }) => (row.sheetsPerBox === null ? [] : [row.sheetsPerBox]));
  const most = Math.max(...fitting, 0.25);
  const roughest = Math.max(...points.map(({ row }) => row.roughness), 1);
  const x = (roughness: number) => EDGE.left + (roughness / roughest) * (width - EDGE.left - EDGE.right);
  const y = (sheets: number) => height - EDGE.bottom - (sheets / most) * (height - EDGE.top - EDGE.bottom);
  const places = points.map(({ row }) => [x(row.roughness), y(row.sheetsPerBox ?? most)] as const);
  return (
    <figure className="marks-plot">
      <figcaption>
        <strong>{words.plot}</strong> <span className="soft">{words.plotWhy}</span>
      </figcaption>
      <svg ref={svg} viewBox={`0 0 ${width} ${height}`}>
        <title>{words.plot}</title>
        <path
          className="plot-axis"
          d={`M${EDGE.left} ${EDGE.top}V${height - EDGE.bottom}H${width - EDGE.right}`}
        />
        <text x={EDGE.left - 8} y={y(most) + 5} textAnchor="end">
          {Number(most.toFixed(2))}
        </text>
        <text x={EDGE.left - 8} y={y(0) + 5} textAnchor="end">
          0
        </text>
        <text x={8} y={16}>
          {words.paperEach}
        </text>
        <text x={x(0)} y={height - EDGE.bottom + 20} textAnchor="middle">
          0
        </text>
        <text x={x(roughest)} y={height - EDGE.bottom + 20} textAnchor="middle">
          {roughest}
        </text>
        <text x={width - EDGE.right} y={height - 10} textAnchor="end">
          {words.roughness}
        </text>
        {places.map(([cx, cy], i) => {
          const twins = places.slice(0, i).filter(([px, py]) => px === cx && py === cy).length;
          const at = cx + twins * 12;
          const point = points[i];
          if (!point) return null;
          return (
            <g
              key={point.label}
              className={classNames('plot-point', lit === i && 'plot-lit', point.inUse && 'plot-in-use')}
            >
              <circle cx={at} cy={cy} r={lit === i ? 10 : 7} />
              <foreignObject x={at - TOUCH / 2} y={cy - TOUCH / 2} width={TOUCH} height={TOUCH}>
                <button
                  type="button"
                  aria-label={point.label}
                  title={point.label}
                  aria-pressed={point.inUse}
                  onClick={() => onTake(point.row)}
                  onFocus={() => onLight(i)}
                  onBlur={() => onLight(null)}
                  onPointerEnter={() => onLight(i)}
                  onPointerLeave={() => onLight(null)}
                />
              </foreignObject>
            </g>
          );
        })}
      </svg>
    </figure>
  );
}
