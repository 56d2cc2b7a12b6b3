import { writeLink } from '../../shared/share-link';
import { workbookOf } from '../../shared/write-workbook';
import { boxCards } from '../../src/core/bench';
import type { BoxStyle } from '../../src/core/styles/language/types';
import { inches } from '../../src/core/units';
import type { HandoutInput } from '../../src/print';
import { recipeRow } from '../storage/sample-rows';
import { boxOf, inch, type metric, stamp } from './printed-boxes';

export const TIP = 'Rest the card a night in the room it is folded in.';
const soap = {
  items: [
    {
      id: 'soap',
      name: 'Soap & salt',
      size: { shape: 'cuboid', widthMm: 60, depthMm: 25, heightMm: 60 },
      count: 2,
      wrapMm: 0,
      aboveRimMm: 0,
      thisWayUp: false,
      fragile: false,
      care: ['small-parts'],
      gramsEach: 90,
    },
  ],
  clearanceMm: null,
} as const;

/** A recipe with everything a maker can add, ready to be taught. */
export function inputOf(style: BoxStyle, ruler: typeof inch | typeof metric = inch): HandoutInput {
  const net = boxOf(style);
  const tool = {
    name: 'trimmer',
    finestMark: ruler.finest,
    unit: ruler.unit,
    reach: inches(12),
    longestCut: inches(12),
    kind: 'fence',
  } as const;
  const cards = boxCards(net, tool);
  const recipe = recipeRow('seed', {
    name: 'Seed <box>',
    styleId: style.id,
    contents: { ...soap, items: soap.items.map((item) => ({ ...item, care: [...item.care] })) },
    handout: {
      tips: [
        { id: 'a', step: null, says: TIP },
        { id: 'b', step: cards[0]?.steps[1]?.id ?? '', says: 'Score twice, lightly.' },
      ],
      credits: 'The Tuesday table',
    },
  });
  const link = writeLink(workbookOf('recipe', { recipes: [recipe] }));
  return {
    recipe,
    style,
    net,
    cards,
    ruler,
    seconds: 275,
    photos: [],
    link: link.ok ? `https://box.example/#${link.fragment}` : null,
    stamp,
  };
}
