import type { weightWays } from '../../../../shared/catalogue';
import { plural } from './plural';
import { weightText } from './weight-text';

/** A paper as its label was read. */
interface LabelRead {
  readonly sheet: string;
  readonly ways: ReturnType<typeof weightWays>;
  /** Whether the label says how heavy or how thick the paper is. */
  readonly weighed: boolean;
  /** Null: the label names no price. */
  readonly price: { readonly money: string; readonly sheets: number } | null;
  readonly unread: readonly string[];
}

/** What is asked for, said and refused where a paper is typed from its label. */
export const paperLabelMessages = {
  help: 'Copy the label, such as 12x12, 65 lb, white, $12.99 for 25.',
  noSize: 'This has no sheet size. Start with one: 12x12 or 8 1/2 x 11 in.',
  read: ({ sheet, ways, weighed, price, unread }: LabelRead) =>
    [
      weighed
        ? `Sheet ${sheet}, ${weightText(ways)}`
        : `Sheet ${sheet}. No weight, so we use ${weightText(ways)}`,
      price
        ? `${price.money} for ${price.sheets === 1 ? 'one sheet' : plural(price.sheets, 'sheet')}.`
        : 'No price.',
      ...(unread.length > 0 ? [`We couldn’t read ${unread.join(', ')}.`] : []),
    ].join(' '),
};
