import { boxCards } from '../../src/core/bench';
import { layNet } from '../../src/core/net';
import { STYLES } from '../../src/core/styles';
import type { BoxStyle } from '../../src/core/styles/language/types';
import { inches, millimetres } from '../../src/core/units';
import { type PaperName, printBenchCard, printTemplate } from '../../src/print';

export const PAPERS: readonly PaperName[] = ['letter', 'a4'];
export const stamp = { madeAt: '2027-01-09T10:00:00Z', code: 'seed-box r1' };
export const inch = { unit: 'in', finest: inches(0, 1, 16) } as const;
export const metric = { unit: 'mm', finest: millimetres(1) } as const;
export const boxOf = (style: BoxStyle) =>
  layNet(style, { sizes: style.id === 'open-top' ? { flap: inches(1, 1, 2) } : {}, caliperUm: 300 });

/** The first style of the registry: an open-top box 3 1/2 wide, 1 1/2 deep, 3 high, flaps 1 1/2 in. */
export const openTop = STYLES.find(({ id }) => id === 'open-top')!;

export function templateOf(
  style: BoxStyle,
  paper: PaperName,
  more: Partial<Parameters<typeof printTemplate>[0]> = {},
) {
  return printTemplate({
    recipeName: 'Seed box',
    pieces: boxOf(style).pieces,
    faceUp: 'inside',
    grain: 'up',
    ruler: inch,
    paper,
    stamp,
    ...more,
  });
}

export function benchCardOf(
  style: BoxStyle,
  paper: PaperName,
  ruler: typeof inch | typeof metric = inch,
  edition: 'compact' | 'roomy' = 'compact',
) {
  const box = boxOf(style);
  const tool = {
    name: 'trimmer',
    finestMark: ruler.finest,
    unit: ruler.unit,
    reach: inches(12),
    longestCut: inches(12),
    kind: 'fence',
  } as const;
  const cards = boxCards(box, tool);
  return printBenchCard({
    recipeName: 'Seed box',
    styleName: style.name,
    inside: box.inside,
    cards,
    faceUp: 'outside',
    edition,
    grain: 'up',
    ruler,
    paper,
    notes: '',
    stamp,
  });
}
