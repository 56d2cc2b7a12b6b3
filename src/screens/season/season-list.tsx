import type { SeasonPlan } from '../../core/plan';
import { WideBox } from '../../ui/drawing/wide-box';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';

interface SeasonListProps {
  readonly season: SeasonPlan;
  readonly nameOf: (eventId: string) => string;
}

/** One shopping list in the order of need, and which event gets what is on hand. */
export function SeasonList({ season: { rows }, nameOf }: SeasonListProps) {
  const { season: words } = usePageWords();
  const short = rows.filter(({ toBuy }) => toBuy > 0);
  const shared = rows.filter(({ onHand, promised }) => onHand > 0 && promised.length > 0);
  return (
    <section aria-labelledby="season-buy">
      <h2 id="season-buy">{words.buyHead}</h2>
      <p className="soft">{words.buyWhy}</p>
      {short.length === 0 ? (
        <p>{words.nothingToBuy}</p>
      ) : (
        <WideBox label={words.buyHead}>
          <table className="season-table">
            <caption className="said-only">{words.buyHead}</caption>
            <thead>
              <tr>
                <th scope="col">{words.what}</th>
                <th scope="col">{words.toBuy}</th>
                <th scope="col">{words.needed}</th>
                <th scope="col">{words.onHand}</th>
                <th scope="col">{words.neededBy}</th>
              </tr>
            </thead>
            <tbody>
              {short.map(({ id, name, unit, need, onHand, toBuy, firstFor }) => (
                <tr key={id}>
                  <th scope="row">
                    {name} <span className="soft">({words.units[unit]})</span>
                  </th>
                  <td>
                    <strong>{toBuy}</strong>
                  </td>
                  <td>{need}</td>
                  <td>{onHand}</td>
                  <td>{firstFor === null ? '' : nameOf(firstFor)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </WideBox>
      )}
      {shared.length > 0 && (
        <Opening head={words.promisedHead}>
          <WideBox label={words.promisedHead}>
            <table className="season-table">
              <caption className="said-only">{words.promisedHead}</caption>
              <thead>
                <tr>
                  <th scope="col">{words.what}</th>
                  <th scope="col">{words.event}</th>
                  <th scope="col">{words.needed}</th>
                  <th scope="col">{words.promised}</th>
                  <th scope="col">{words.toBuy}</th>
                </tr>
              </thead>
              <tbody>
                {shared.flatMap(({ id, name, promised }) =>
                  promised.map(({ eventId, need, fromStock, toBuy }) => (
                    <tr key={`${id} ${eventId}`}>
                      <th scope="row">{name}</th>
                      <td>{nameOf(eventId)}</td>
                      <td>{need}</td>
                      <td>{fromStock}</td>
                      <td>{toBuy}</td>
                    </tr>
                  )),
                )}
              </tbody>
            </table>
          </WideBox>
        </Opening>
      )}
    </section>
  );
}
