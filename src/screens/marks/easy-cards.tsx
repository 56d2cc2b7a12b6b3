import { useMemo } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { type Arrangement, type ChosenRow, costOfRow, type EasyRow } from '../../core/fit';
import { type BoxNet, layNet } from '../../core/net';
import { styleById } from '../../core/styles';
import { type Ticks, ticks } from '../../core/units';
import { Button } from '../../ui/fields/button';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { FoldedPicture } from '../../ui/folded/folded-picture';
import { classNames } from '../../ui/frame/class-names';
import { usePageWords, useSay } from '../../ui/words';
import { paperWords, sizesWords } from './row-words';

/** The box as it is now, to set a row beside. */
export interface BoxInHand {
  readonly recipe: Recipe;
  readonly net: BoxNet;
  /** Sheets for one; null where it is larger than the sheet. */
  readonly sheetsPerBox: number | null;
  readonly colour: string | undefined;
  readonly holds: Arrangement | undefined;
}

interface EasyCardsProps {
  readonly chosen: readonly ChosenRow[];
  readonly hand: BoxInHand;
  readonly need: readonly [Ticks, Ticks, Ticks];
  readonly sheet: string;
  readonly inUse: (row: EasyRow) => boolean;
  readonly onUse: (row: EasyRow) => void;
}

/** The sizes most makers want, each as a picture and what it gives: sheets, room to spare, what changes against the box in hand. */
export function EasyCards({ chosen, hand, need, sheet, inUse, onUse }: EasyCardsProps) {
  const words = usePageWords().marks;
  const ruler = useRuler();
  return (
    <ul className="easy-cards">
      {chosen.map(({ row, merits }) => {
        const isNow = inUse(row);
        const { hardest, loose } = costOfRow(row, need);
        const steps = words.hardest[ruler.unit];
        return (
          <li key={merits.join(' ')} className={classNames('easy-card', isNow && 'easy-card-now')}>
            <RowPicture row={row} hand={hand} />
            <div className="easy-card-words">
              <h3>{words.cards.merits(merits)}</h3>
              <p>
                <strong>{sizesWords(hand.recipe.styleId, row, ruler)}</strong>
              </p>
              <ul>
                <li>{paperWords(row, need, sheet, words)}</li>
                <li>{loose > 0 ? words.cards.toSpare(lengthWords(loose, ruler)) : words.cards.noRoom}</li>
                <li>{steps[Math.min(hardest, steps.length - 1)]}</li>
                {row.byTemplate > 0 && <li>{words.byTemplate(row.byTemplate)}</li>}
              </ul>
              <p className="soft">
                <Changes row={row} hand={hand} need={need} />
              </p>
            </div>
            {isNow ? (
              <p className="easy-card-use">{words.inUse}</p>
            ) : (
              <Button className="easy-card-use" onClick={() => onUse(row)}>
                {words.use}
                <span className="said-only">: {words.cards.merits(merits)}</span>
              </Button>
            )}
          </li>
        );
      })}
    </ul>
  );
}

function RowPicture({ row, hand: { recipe, net, colour, holds } }: { row: EasyRow; hand: BoxInHand }) {
  const style = styleById(recipe.styleId);
  const { finest } = useRuler();
  const laid = useMemo(
    () =>
      style &&
      layNet(style, { sizes: row.sizes, options: row.options, caliperUm: net.caliperUm, mark: finest }),
    [style, row, net.caliperUm, finest],
  );
  return (
    <span className="style-picture">
      {laid && <FoldedPicture net={laid} {...(colour && { colour })} holds={holds} />}
    </span>
  );
}

/** "Same size, flap 1 in instead of 1 1/2 in: 2 from letter instead of 1." */
function Changes({ row, hand, need }: { row: EasyRow; hand: BoxInHand; need: EasyCardsProps['need'] }) {
  const words = usePageWords().marks.cards;
  const say = useSay();
  const ruler = useRuler();
  const style = styleById(hand.recipe.styleId);
  const differing = Object.entries(style?.symbols ?? {}).flatMap(([name, { label, role }]) => {
    const [now, was] = [row.sizes[name] ?? ticks(0), hand.net.values[name] ?? ticks(0)];
    return now === 0 || now === was ? [] : [{ role, label: say(label).toLowerCase(), now, was }];
  });
  const ways = Object.entries(row.options).flatMap(([name, id]) => {
    const option = style?.options?.[name];
    const choice = option?.choices.find((each) => each.id === id);
    if (!option || !choice || hand.net.options[name] === id) return [];
    return [`${say(option.label).toLowerCase()}: ${say(choice.label).toLowerCase()}`];
  });
  const parts = [
    ...(differing.some(({ role }) => role === 'size') ? [] : [words.sameSize]),
    ...differing.map(({ label, now, was }) =>
      words.instead(`${label} ${lengthWords(now, ruler)}`, lengthWords(was, ruler)),
    ),
    ...ways,
  ];
  const { boxesPerSheet } = costOfRow(row, need);
  const before = hand.sheetsPerBox === null ? 0 : Math.round(1 / hand.sheetsPerBox);
  const paper =
    boxesPerSheet !== null && boxesPerSheet !== before && (hand.sheetsPerBox === null || before > 0)
      ? words.perSheetInstead(boxesPerSheet, before)
      : null;
  return words.changes(parts, paper);
}
