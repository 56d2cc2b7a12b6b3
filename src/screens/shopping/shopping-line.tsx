import { PackageCheck, PackageOpen } from 'lucide-react';
import { weightWays } from '../../../shared/catalogue';
import { type BoughtRow, printMoney, unitsOf } from '../../core/plan';
import { Button } from '../../ui/fields/button';
import { classNames } from '../../ui/frame/class-names';
import { Opening } from '../../ui/frame/opening';
import { Working } from '../../ui/frame/working';
import { usePageWords } from '../../ui/words';
import type { ShoppingEdits } from './shopping-edits';

interface ShoppingLineProps {
  readonly followed: BoughtRow;
  readonly currency: string;
  readonly edits: ShoppingEdits;
}

/** One row: a tick, what it is with the working of it, and where it has got to. */
export function ShoppingLine({ followed, currency, edits }: ShoppingLineProps) {
  const { row, underway } = followed;
  const words = usePageWords();
  const money = (minor: number) => printMoney(minor, currency, words.locale);
  const units = words.shopping.units[row.unit];
  const canTick = row.short > 0 || underway !== null;
  return (
    <tr className={classNames('shopping-row', underway !== null && 'is-bought')}>
      <td className="shopping-tick">
        {canTick && (
          <label>
            <input
              type="checkbox"
              checked={underway !== null}
              aria-label={words.buying.tickOf(row.name)}
              onChange={() => (underway ? edits.untick(underway) : edits.tick(row))}
            />
          </label>
        )}
      </td>
      <th scope="row" aria-label={row.name}>
        <Opening head={row.name}>
          <Working why={row.why} currency={currency} />
        </Opening>
        {row.weighs && row.short > 0 && (
          <p className="soft">{words.shopping.askFor(words.stock.weighs(weightWays(row.weighs)))}</p>
        )}
        <State {...{ followed, edits }} />
      </th>
      <td data-head={words.shopping.need}>{units(row.need)}</td>
      <td data-head={words.shopping.onHand}>{row.onHand}</td>
      <td data-head={words.shopping.buy}>
        <Packs followed={followed} />
      </td>
      <td data-head={words.buying.left}>
        {row.leftOver === 0
          ? '–'
          : row.leftOverMinor === null
            ? units(row.leftOver)
            : words.buying.worth(units(row.leftOver), money(row.leftOverMinor))}
      </td>
      <td data-head={words.shopping.price}>
        {row.priceMinor === null ? (
          <span className="soft">{words.shopping.noPrice}</span>
        ) : (
          money(row.priceMinor)
        )}
      </td>
    </tr>
  );
}

/** What is bought and on its way, and what has come. */
function State({ followed, edits }: Pick<ShoppingLineProps, 'followed' | 'edits'>) {
  const { row, underway, received } = followed;
  const words = usePageWords();
  const units = words.shopping.units[row.unit];
  return (
    <div className="shopping-state">
      {underway && (
        <>
          <span className="soft">
            {words.buying.boughtPacks(underway.packs, units(unitsOf(underway)))}
            {followed.stillShort > 0 && `; ${words.buying.moreNeeded(units(followed.stillShort))}`}
          </span>
          <Button
            icon={<PackageCheck aria-hidden="true" />}
            aria-label={words.buying.receiveOf(row.name)}
            onClick={() => edits.receive(words.buying.receiveOf(row.name), [underway])}
          >
            {words.buying.receive}
          </Button>
        </>
      )}
      {received.map((entry, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: deliveries have no names, and keep their order
        <span key={place} className="shopping-received">
          <span className="soft">{words.buying.received(units(unitsOf(entry)))}</span>
          <Button
            tone="quiet"
            icon={<PackageOpen aria-hidden="true" />}
            aria-label={words.buying.takeBackOf(row.name)}
            onClick={() => edits.takeBack(words.buying.takeBackOf(row.name), entry)}
          >
            {words.buying.takeBack}
          </Button>
        </span>
      ))}
    </div>
  );
}

function Packs({ followed: { row } }: Pick<ShoppingLineProps, 'followed'>) {
  const words = usePageWords().shopping;
  const packs = row.packs.filter(({ count }) => count > 0);
  if (row.short === 0) return <span className="soft">{words.enough}</span>;
  if (packs.length === 0) return words.units[row.unit](row.short);
  return (
    <span>
      {packs.map(({ units, count, free }) => (
        <span key={units} className="pack">
          {words.packs(count, units, row.unit)}
          {free > 0 && `, ${words.freeOf(free)}`}
        </span>
      ))}
    </span>
  );
}
