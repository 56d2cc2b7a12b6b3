import { type EventPlan, type OrderSum, type OrderWay, printMoney, type ShoppingRow } from '../../core/plan';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';

interface TillProps {
  readonly plan: EventPlan;
}

/** From the goods to what is paid: discount, shipping and tax as the shop's terms say. */
export function TillSum({ sum, currency }: { sum: OrderSum; currency: string }) {
  const words = usePageWords();
  const money = (minor: number) => printMoney(minor, currency, words.locale);
  return (
    <dl className="till">
      <div>
        <dt>{words.buying.goods}</dt>
        <dd>{money(sum.subtotalMinor)}</dd>
      </div>
      {sum.discountMinor > 0 && (
        <div>
          <dt>
            {words.buying.discount}, {words.buying.percentOff(sum.discountPercent)}
          </dt>
          <dd>−{money(sum.discountMinor)}</dd>
        </div>
      )}
      {sum.shippingMinor > 0 && (
        <div>
          <dt>{words.buying.shipping}</dt>
          <dd>{money(sum.shippingMinor)}</dd>
        </div>
      )}
      {sum.taxMinor > 0 && (
        <div>
          <dt>{words.buying.tax}</dt>
          <dd>{money(sum.taxMinor)}</dd>
        </div>
      )}
      <div className="till-total">
        <dt>{words.buying.till}</dt>
        <dd>{money(sum.totalMinor)}</dd>
      </div>
    </dl>
  );
}

/** Every way of buying it all side by side, the cheapest first, with the packs that each takes. */
export function Ways({ plan: { ways, shopping, cost } }: TillProps) {
  const words = usePageWords();
  const [best] = ways;
  const money = (minor: number) => printMoney(minor, cost.currency, words.locale);
  if (ways.length < 2) return null;
  return (
    <section aria-labelledby="ways-head">
      <h2 id="ways-head">{words.buying.ways}</h2>
      <p className="soft">{words.buying.waysWhy}</p>
      <ul className="ways">
        {ways.map((way) => (
          <li key={way.reaches ?? 0} className="way">
            <h3>
              {way.reaches === null ? words.buying.plainWay : words.buying.reaching(money(way.reaches))}
            </h3>
            <p className={way === best ? 'way-best' : 'soft'}>
              {way === best
                ? words.buying.cheapest
                : words.buying.dearer(money(way.totalMinor - best.totalMinor))}
            </p>
            <TillSum sum={way} currency={cost.currency} />
            <WayPacks way={way} rows={shopping} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function WayPacks({ way, rows }: { way: OrderWay; rows: readonly ShoppingRow[] }) {
  const words = usePageWords().shopping;
  const bought = rows.flatMap((row, place) => {
    const packs = way.purchases[place]?.packs.filter(({ count }) => count > 0) ?? [];
    if (packs.length === 0) return [];
    const said = packs.map(({ pack, count }) => words.packs(count, pack.units, row.unit)).join(', ');
    return [{ id: row.id, name: row.name, said }];
  });
  return (
    <Opening head={words.buy}>
      <ul className="working">
        {bought.map(({ id, name, said }) => (
          <li key={id}>
            {name}: {said}
          </li>
        ))}
      </ul>
    </Opening>
  );
}
