import { Shuffle, X } from 'lucide-react';
import type { EventLine, FavorEvent } from '../../../shared/workbook';
import {
  type EventMix,
  type EventPlan,
  MIX_WAYS,
  type MixPlan,
  papersOfLine,
  printMoney,
} from '../../core/plan';
import { useMixes } from '../../state/results/mix-result';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { Swatch } from '../../ui/frame/swatch';
import { usePageWords } from '../../ui/words';
import './mix-panel.css';

/** The event from one paper, from two, from any mix of those that its lines allow: what each costs, and whether anything costs less. */
export function MixPanel({ event, plan }: { event: FavorEvent; plan: EventPlan }) {
  const { sheets: words, locale } = usePageWords();
  const { mixes, busy, stale, start, cancel } = useMixes(event.id);
  const edit = useWorkbook((state) => state.edit);
  const change = (says: string, lineOf: (line: EventLine) => EventLine) =>
    edit('events', event.id, says, (old) => ({ ...old, lines: old.lines.map(lineOf) }));
  const use = ({ mixOf }: EventMix) =>
    change(words.useMix, ({ mix: _, ...line }) => {
      const its = mixOf[line.id];
      return its === undefined ? line : { ...line, mix: [...its] };
    });
  const money = (minor: number) => printMoney(minor, event.currency, locale);
  const cheapest = mixes.find(({ way }) => way === 'any')?.plan;
  const mixed = event.lines.some(({ mix }) => mix !== undefined);
  return (
    <section className="mix screen-only" aria-labelledby="mix-head">
      <h2 id="mix-head">{words.mix}</h2>
      <p className="soft">{words.mixWhy}</p>
      <MayComeFrom event={event} plan={plan} change={change} />
      {mixed && (
        <p className="mix-acts">
          {words.mixInUse}
          <Button onClick={() => change(words.mixOff, ({ mix: _, ...line }) => line)}>{words.mixOff}</Button>
        </p>
      )}
      <div className="mix-acts">
        {busy ? (
          <Button icon={<X aria-hidden="true" />} onClick={cancel}>
            {words.mixCancel}
          </Button>
        ) : (
          <Button icon={<Shuffle aria-hidden="true" />} onClick={start}>
            {words.mixStart}
          </Button>
        )}
      </div>
      <p role="status">
        {busy && `${words.mixBusy} `}
        {stale && !busy && `${words.mixStale} `}
        {!busy && cheapest && (
          <strong>{words.mixCheapest(money(cheapest.priceMinor), proofOf(cheapest, words, money))}</strong>
        )}
      </p>
      {mixes.length > 0 && (
        <MixTable mixes={mixes} event={event} plan={plan} money={money} use={busy || stale ? null : use} />
      )}
    </section>
  );
}

type SheetsWords = ReturnType<typeof usePageWords>['sheets'];
type Money = (minor: number) => string;

const proofOf = (
  { proven, priceMinor, boundMinor }: MixPlan,
  words: SheetsWords,
  money: Money,
  ofAll = true,
): string =>
  proven ? (ofAll ? words.mixProven : words.mixProvenKind) : words.mixBounded(money(priceMinor - boundMinor));

/** The papers each line may come from: its own, and whichever else the maker allows. */
function MayComeFrom({
  event,
  plan,
  change,
}: {
  event: FavorEvent;
  plan: EventPlan;
  change: (says: string, lineOf: (line: EventLine) => EventLine) => void;
}) {
  const words = usePageWords().sheets;
  const papers = useWorkbook((state) => state.rows.papers);
  return plan.lines.map(({ lineId, name, paperId: own }) => {
    const line = event.lines.find(({ id }) => id === lineId);
    if (!line) return null;
    const allowed = papersOfLine(own, line);
    const toggle = (paperId: string) => {
      const others = allowed.filter((id) => id !== own && id !== paperId);
      const anyOf = (allowed.includes(paperId) ? others : [...others, paperId]).map((id) => ({
        paperId: id,
      }));
      change(words.mayComeFrom(name), (each) => {
        if (each.id !== lineId) return each;
        const { anyOf: _, ...alone } = each;
        return anyOf.length > 0 ? { ...alone, anyOf } : alone;
      });
    };
    return (
      <fieldset key={lineId} className="mix-papers">
        <legend>{words.mayComeFrom(name)}</legend>
        {[...papers.values()]
          .filter(
            ({ id, offcutOfId, example }) =>
              offcutOfId === undefined && (id === own || example === event.example),
          )
          .map((paper) => (
            <label key={paper.id}>
              <input
                type="checkbox"
                checked={allowed.includes(paper.id)}
                disabled={paper.id === own || (allowed.length > 9 && !allowed.includes(paper.id))}
                onChange={() => toggle(paper.id)}
              />
              <Swatch colour={paper.colour} /> {paper.name}
            </label>
          ))}
      </fieldset>
    );
  });
}

interface MixTableProps {
  readonly mixes: readonly EventMix[];
  readonly event: FavorEvent;
  readonly plan: EventPlan;
  readonly money: Money;
  /** Null: what is shown may not be the last word, so it is not to be used yet. */
  readonly use: ((mix: EventMix) => void) | null;
}

function MixTable({ mixes, event, plan, money, use }: MixTableProps) {
  const words = usePageWords().sheets;
  const papers = useWorkbook((state) => state.rows.papers);
  const nameOf = (id: string) => papers.get(id)?.name ?? id;
  const wayWords = { one: words.mixOne, two: words.mixTwo, any: words.mixAny } as const;
  const lineName = (lot: string) => plan.lines.find(({ lineId }) => lineId === lot)?.name;
  const rows = MIX_WAYS.flatMap((way) => mixes.filter((mix) => mix.way === way));
  return (
    <div className="table-box comparison">
      <table className="parts-table">
        <thead>
          <tr>
            <th scope="col">{words.paper}</th>
            <th scope="col">{words.toBuy}</th>
            <th scope="col">{words.sheetsHead}</th>
            <th scope="col">{words.mixBoxes}</th>
            <th scope="col">{words.mixLeft}</th>
            <th scope="col">
              <span className="said-only">{words.change}</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((mix) => (
            <tr key={mix.way}>
              <th scope="row">{wayWords[mix.way]}</th>
              {mix.plan === null ? (
                <td colSpan={5}>{words.mixCannot}</td>
              ) : (
                <>
                  <td data-head={words.toBuy}>
                    <strong>{money(mix.plan.priceMinor)}</strong>{' '}
                    <span className="caption">{proofOf(mix.plan, words, money, mix.way === 'any')}</span>
                  </td>
                  <td data-head={words.sheetsHead}>
                    <ul className="mix-list">
                      {mix.plan.cuts.map(({ format, plan: its }) => (
                        <li key={format}>
                          {words.mixSheets(its.sheets, nameOf(format), its.layouts.length)}
                        </li>
                      ))}
                    </ul>
                  </td>
                  <td data-head={words.mixBoxes}>
                    <ul className="mix-list">
                      {mix.plan.shares
                        .filter(({ lot }) => lineName(lot) !== undefined)
                        .map(({ lot, card, boxes }) => (
                          <li key={`${lot} ${card}`}>
                            {words.mixShare(lineName(lot) ?? '', boxes, nameOf(card))}
                          </li>
                        ))}
                    </ul>
                  </td>
                  <td data-head={words.mixLeft}>
                    <ul className="mix-list">
                      {mix.plan.cuts.map(({ format, plan: its, purchase, onHand }) => {
                        const left = onHand + purchase.units - its.sheets;
                        return left > 0 && <li key={format}>{words.mixLeftOf(left, nameOf(format))}</li>;
                      })}
                    </ul>
                  </td>
                  <td>
                    {isInUse(event, mix) ? (
                      <span className="soft">{words.inUse}</span>
                    ) : (
                      use && <Button onClick={() => use(mix)}>{words.useMix}</Button>
                    )}
                  </td>
                </>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

const isInUse = ({ lines }: FavorEvent, { mixOf }: EventMix): boolean =>
  lines.every(({ id, mix }) => JSON.stringify(mix) === JSON.stringify(mixOf[id]));
