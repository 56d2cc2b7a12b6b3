import { cautionsOf } from '../../shared/catalogue';
import { cutMarkOf } from '../core/plan';
import {
  type PaperName,
  type PrintDocument,
  type PrintStamp,
  printBenchCard,
  printDecorateMap,
  printTemplate,
} from '../print';
import { cardsOf, type MadeBox } from './made-box';

const GRAIN = { upright: 'up', around: 'across', free: null } as const;

const sharedOf = ({ name, ruler, recipe }: MadeBox, paper: PaperName, stamp: PrintStamp) => ({
  recipeName: name,
  faceUp: recipe?.faceUp ?? 'outside',
  grain: GRAIN[recipe?.grain ?? 'free'],
  ruler,
  paper,
  stamp,
});

/** The card that lies beside the trimmer. */
export const benchCardOf = (
  box: MadeBox,
  paper: PaperName,
  stamp: PrintStamp,
  paperName: string | null = null,
): PrintDocument =>
  printBenchCard({
    ...sharedOf(box, paper, stamp),
    styleName: box.styleName,
    inside: box.net.inside,
    paperName,
    cards: cardsOf(box),
    notes: box.recipe?.notes ?? '',
    cautions: box.recipe?.contents ? cautionsOf(box.recipe.contents).map(({ says }) => says) : [],
    ...(box.recipe && box.recipe.dressings.length > 0
      ? { dressed: { net: box.net, dressings: box.recipe.dressings, mark: cutMarkOf(box.bench) } }
      : {}),
  });

/** The nets at true size, to lay on the card. */
export const templateOf = (box: MadeBox, paper: PaperName, stamp: PrintStamp): PrintDocument =>
  printTemplate({ ...sharedOf(box, paper, stamp), pieces: box.net.pieces });

/** The same with the outside up, for decorating while flat. */
export const mapOf = (box: MadeBox, paper: PaperName, stamp: PrintStamp): PrintDocument =>
  printDecorateMap({ ...sharedOf(box, paper, stamp), pieces: box.net.pieces });
