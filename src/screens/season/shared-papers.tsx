import type { SeasonPaper } from '../../core/plan';
import { WideBox } from '../../ui/drawing/wide-box';
import { usePageWords } from '../../ui/words';

/** Papers that two events or more are cut from: sheets one by one, together, and whether fewer are possible. */
export function SharedPapers({ papers }: { papers: readonly SeasonPaper[] }) {
  const { season: words } = usePageWords();
  const shared = papers.filter(({ apart }) => apart.length > 1);
  if (shared.length === 0) return null;
  return (
    <section aria-labelledby="season-sheets">
      <h2 id="season-sheets">{words.sheetsHead}</h2>
      <p className="soft">{words.sheetsWhy}</p>
      <WideBox label={words.sheetsHead}>
        <table className="season-table">
          <caption className="said-only">{words.sheetsHead}</caption>
          <thead>
            <tr>
              <th scope="col">{words.paper}</th>
              <th scope="col">{words.apart}</th>
              <th scope="col">{words.together}</th>
              <th scope="col">{words.proof}</th>
            </tr>
          </thead>
          <tbody>
            {shared.map(({ paperId, name, apart, apartSheets, plan }) => (
              <tr key={paperId}>
                <th scope="row">{name}</th>
                <td>
                  {apart.map(({ plan: { sheets } }) => sheets).join(' + ')} = {apartSheets}
                </td>
                <td>
                  <strong>{plan.sheets}</strong>{' '}
                  {plan.sheets < apartSheets && (
                    <span className="soft">{words.saves(apartSheets - plan.sheets)}</span>
                  )}
                </td>
                <td>{plan.proven ? words.proven : words.spare(plan.sheets - plan.lowerBound)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </WideBox>
    </section>
  );
}
