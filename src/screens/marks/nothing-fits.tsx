import type { WayOut } from '../../core/fit';
import type { Ticks } from '../../core/units';
import type { StyleRows } from '../../state/results/fit-result';
import { Button } from '../../ui/fields/button';
import { sizeWords, useRuler } from '../../ui/fields/measure';
import { usePageWords } from '../../ui/words';
import type { NamedSheet } from './marks-ask';

interface NothingFitsProps {
  readonly found: StyleRows;
  /** A net of the maker’s own: its sizes stand in its file. */
  readonly fixed: boolean;
  readonly sheets: readonly NamedSheet[];
  readonly onSheet: (id: string) => void;
  readonly onTurn: (need: readonly [Ticks, Ticks, Ticks]) => void;
  readonly onSlack: () => void;
}

/** Where no size fits the sheet, or none reads at all: what would, each way out tried and offered as a press. */
export function NothingFits({ found, fixed, sheets, onSheet, onTurn, onSlack }: NothingFitsProps) {
  const words = usePageWords().marks;
  if (found.rows.some(({ sheetsPerBox }) => sheetsPerBox !== null)) return null;
  if (fixed)
    return (
      <section className="marks-none" role="status">
        <h2>{words.ownNet}</h2>
        <p>{words.ownNetWhy}</p>
      </section>
    );
  const none = found.rows.length === 0;
  return (
    <section className="marks-none" role="status">
      <h2>{none ? words.noneReads : words.noneFits}</h2>
      {none && <p>{words.noneReadsWhy}</p>}
      <ul>
        {none && (
          <li>
            <Button onClick={onSlack}>{words.moreSlack}</Button>
          </li>
        )}
        {found.waysOut.map((way) => (
          <li key={way.kind}>
            <WayOutLine way={way} sheets={sheets} onSheet={onSheet} onTurn={onTurn} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function WayOutLine({
  way,
  sheets,
  onSheet,
  onTurn,
}: Omit<NothingFitsProps, 'found' | 'fixed' | 'onSlack'> & { way: WayOut }) {
  const words = usePageWords().marks;
  const ruler = useRuler();
  if (way.kind === 'sheet') {
    const name = sheets.find(({ id }) => id === way.paperId)?.name ?? way.paperId;
    return (
      <>
        <span>{words.otherSheet(name)}</span>
        <Button onClick={() => onSheet(way.paperId)}>{words.takeSheet}</Button>
      </>
    );
  }
  if (way.kind === 'turned')
    return (
      <>
        <span>{words.turned(sizeWords(way.need, ruler))}</span>
        <Button onClick={() => onTurn(way.need)}>{words.turnIt}</Button>
      </>
    );
  return <span>{words.twoPiece(way.piece, sizeWords([way.across, way.up], ruler))}</span>;
}
