import type { FavorEvent, Paper } from '../../../shared/workbook';
import { type EventPlan, printMoney, sheetOfPaper } from '../../core/plan';
import { type CuttingTool, waysToCount } from '../../core/yield';
import { onPaper, usePaperComparison } from '../../state/results/paper-comparison';
import { useSheetCounts } from '../../state/results/sheet-counts';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { Swatch } from '../../ui/frame/swatch';
import { usePageWords } from '../../ui/words';

/** The same event cut from each paper there is: sheets, proof, what would be bought; one press changes over. */
export function PaperComparison({
  event,
  plan,
  tool,
}: {
  event: FavorEvent;
  plan: EventPlan;
  tool: CuttingTool;
}) {
  const words = usePageWords();
  const rows = usePaperComparison(event.id);
  const edit = useWorkbook((state) => state.edit);
  const now = new Set(plan.papers.map(({ paperId }) => paperId));
  const proofOf = (fits: boolean, gap: number) =>
    !fits ? words.sheets.doesNotFit : gap === 0 ? words.sheets.provenShort : words.sheets.boundedShort(gap);
  if (rows.length < 2) return null;
  const use = (paperId: string) =>
    edit('events', event.id, words.event.paper, (old) => onPaper(old, paperId));
  return (
    <section className="comparison" aria-labelledby="comparison-head">
      <h2 id="comparison-head">{words.sheets.compare}</h2>
      <div className="table-box">
        <table className="parts-table">
          <thead>
            <tr>
              <th scope="col">{words.sheets.paper}</th>
              <th scope="col">{words.sheets.sheetsHead}</th>
              <th scope="col">{words.sheets.perSheet}</th>
              <th scope="col">{words.sheets.toBuy}</th>
              <th scope="col">
                <span className="said-only">{words.sheets.change}</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ paper, sheets, lowerBound, fits, priceMinor }) => (
              <tr key={paper.id}>
                <th scope="row">
                  <Swatch colour={paper.colour} /> {paper.name}
                </th>
                <td data-head={words.sheets.sheetsHead}>
                  {fits && <strong>{sheets} </strong>}
                  <span className="caption">{proofOf(fits, sheets - lowerBound)}</span>
                </td>
                <td data-head={words.sheets.perSheet}>
                  <CountsOnSheet paper={paper} plan={plan} tool={tool} />
                </td>
                <td data-head={words.sheets.toBuy}>
                  {!fits
                    ? ''
                    : priceMinor === null
                      ? words.sheets.noPrice
                      : printMoney(priceMinor, event.currency, words.locale)}
                </td>
                <td>
                  {now.size === 1 && now.has(paper.id) ? (
                    <span className="soft">{words.sheets.inUse}</span>
                  ) : (
                    fits && <Button onClick={() => use(paper.id)}>{words.sheets.use}</Button>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

/** The event's first box on one sheet of a paper: lying one way, the other, and with its grain along the sheet's. */
function CountsOnSheet({ paper, plan, tool }: { paper: Paper; plan: EventPlan; tool: CuttingTool }) {
  const words = usePageWords().sheets;
  const box = plan.papers.flatMap(({ parts }) => parts).find(({ kind }) => kind === 'box');
  const sheet = sheetOfPaper(paper);
  const held = box !== undefined && box.grain !== 'free' && sheet.grain !== 'none';
  const ways = box ? waysToCount(box, sheet, tool) : [];
  const [straight, turned, mixed, along] = useSheetCounts(
    box && held ? [...ways, { part: box, paper: sheet, tool }] : ways,
  );
  if (!straight || !turned || !mixed) return null;
  return (
    <>
      {words.bothWays(straight.count, turned.count, mixed.count)}
      {!mixed.exact && <span className="caption"> {words.stillCounting}</span>}
      {along && <span className="caption"> {words.withGrain(along.count)}</span>}
    </>
  );
}
