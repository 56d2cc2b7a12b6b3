import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { type ReactNode, type Ref, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';

/** To be spread over the list item of a row: its place among all rows, and what measures it. */
export interface Place {
  readonly 'aria-setsize'?: number;
  readonly 'aria-posinset'?: number;
  readonly 'data-index'?: number;
  readonly ref?: Ref<HTMLLIElement>;
}

interface LongListProps<Row> {
  readonly rows: readonly Row[];
  readonly className: string;
  /** How tall a row of the list is, about; each is measured once it is drawn. */
  readonly rowPx: number;
  readonly children: (row: Row, place: Place, at: number) => ReactNode;
}

/** Lists up to this long stand on the page as a whole, so that the browser's own find sees them. source: our own */
export const WHOLE_UP_TO = 100;

/**
 * A list, or a grid, of any length. Beyond a hundred rows only those near what is in sight stand on the page; each says which of how many it is.
 * The rows before and after the one that has the focus always do, so the keyboard goes through all of them; on paper all stand.
 */
export function LongList<Row extends { readonly id: string }>(props: LongListProps<Row>) {
  const printing = usePrinting();
  const { rows, className, children } = props;
  if (rows.length > WHOLE_UP_TO && !printing) return <NearSight {...props} />;
  return <ul className={className}>{rows.map((row, at) => children(row, {}, at))}</ul>;
}

/** Whether the page is being put on paper. */
function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', end);
    };
  }, []);
  return printing;
}

interface Laid {
  readonly columns: number;
  readonly gapPx: number;
  /** From the top of the page to the top of the list. */
  readonly topPx: number;
}

/** How the style sheet lays the list, read again whenever the page changes its size. */
function useLaid() {
  const list = useRef<HTMLUListElement>(null);
  const [laid, setLaid] = useState<Laid>({ columns: 1, gapPx: 0, topPx: 0 });
  useLayoutEffect(() => {
    const look = () => {
      if (!list.current) return;
      const style = getComputedStyle(list.current);
      const now = {
        columns: style.display === 'grid' ? style.gridTemplateColumns.split(' ').length : 1,
        gapPx: Number.parseFloat(style.rowGap) || 0,
        topPx: Math.round(list.current.getBoundingClientRect().top + scrollY),
      };
      setLaid((was) => (JSON.stringify(was) === JSON.stringify(now) ? was : now));
    };
    look();
    const watch = new ResizeObserver(look);
    watch.observe(document.body);
    return () => watch.disconnect();
  }, []);
  return { list, laid };
}

function NearSight<Row extends { readonly id: string }>({
  rows,
  className,
  rowPx,
  children,
}: LongListProps<Row>) {
  const { list, laid } = useLaid();
  const { columns, gapPx, topPx } = laid;
  const lines = useWindowVirtualizer({
    count: Math.ceil(rows.length / columns),
    estimateSize: () => rowPx,
    gap: gapPx,
    scrollMargin: topPx,
    overscan: 3,
  });
  // What was measured of lines of five says nothing of lines of two.
  useLayoutEffect(() => lines.measure(), [lines, columns]);
  const drawn = lines.getVirtualItems();
  const [first, last] = [drawn[0], drawn.at(-1)];
  const before = first ? first.start - topPx : 0;
  const after = last ? lines.getTotalSize() - (last.end - topPx) : 0;
  const from = (first?.index ?? 0) * columns;
  return (
    <ul
      ref={list}
      className={className}
      style={{ paddingBlockStart: `${before}px`, paddingBlockEnd: `${after}px` }}
    >
      {rows.slice(from, ((last?.index ?? 0) + 1) * columns).map((row, at) =>
        children(
          row,
          {
            'aria-setsize': rows.length,
            'aria-posinset': from + at + 1,
            ...(at % columns === 0 && { 'data-index': (from + at) / columns, ref: lines.measureElement }),
          },
          from + at,
        ),
      )}
    </ul>
  );
}
