import { lengthWords, sizeWords } from '../core/draw/strokes/length-text';
import { areaMark } from '../core/draw/strokes/marks';
import { setFractions } from '../core/draw/strokes/set-fractions';
import type { EventPlan, KitList } from '../core/plan';
import { boxRing } from '../core/plane';
import { fileStem } from '../core/rows/text';
import type { Ruler } from '../core/units';
import { type Block, besideBlocks, space, stackBlocks, textBlock } from './block';
import { longDate } from './long-date';
import { columnOf, flowColumns, pagesOf } from './page-flow';
import { type PaperName, type PrintDocument, type PrintStamp, TYPE_MM } from './print-document';
import { tableBlocks } from './table-block';

export interface KitLabelsInput {
  readonly plan: Pick<EventPlan, 'name' | 'date'>;
  readonly kit: KitList;
  readonly ruler: Ruler;
  readonly paper: PaperName;
  readonly stamp: PrintStamp;
}

/** One line of a pick list. */
interface KitLine {
  readonly what: string;
  readonly size: string;
  readonly count: number;
}

/** What one kit holds, in the order it is picked: cards, lengths off the roll, counted things. */
function kitLines({ cards, lengths, counted }: KitList, ruler: Ruler): readonly KitLine[] {
  return [
    ...cards.map(({ name, paper, across, up, count }) => ({
      what: paper === null ? name : `${name}, ${paper}`,
      size: sizeWords(across, up, ruler),
      count,
    })),
    ...lengths.map(({ name, length }) => ({ what: name, size: lengthWords(length, ruler), count: 1 })),
    ...counted.map(({ name, count }) => ({ what: name, size: '', count })),
  ].filter(({ count }) => count > 0);
}

/** The pick list of a class, then a label for every kit, to cut apart. */
export function printKitLabels(input: KitLabelsInput): PrintDocument {
  const { plan, kit, ruler, paper, stamp } = input;
  const title = `${plan.name}: kits`;
  const { widthMm } = columnOf(paper);
  const lines = kitLines(kit, ruler);
  const pick = flowColumns(pickBlocks(input, lines, widthMm), paper);
  const labels = flowColumns(labelRows(input, lines, widthMm), paper);
  return {
    name: `${fileStem(plan.name, 'event')}-kits`,
    title,
    pages: pagesOf([...pick, ...labels], paper, { title, code: stamp.code }),
    stamp,
  };
}

const boxesOf = ({ boxes }: KitList): string =>
  boxes.map(({ name, count }) => `${count} × ${name}`).join(', ');

function pickBlocks({ plan, kit }: KitLabelsInput, lines: readonly KitLine[], widthMm: number): Block[] {
  const words = (text: string, sizeMm: number, bold = false) => textBlock(text, { widthMm, sizeMm, bold });
  const spare = kit.packing - kit.kits;
  return [
    words(plan.name, TYPE_MM.title, true),
    space(2.5),
    words(
      `${kit.kits} kits and ${spare} spare: ${kit.packing} to pack.${plan.date ? ` For ${longDate(plan.date)}.` : ''} Each makes ${boxesOf(kit)}.`,
      TYPE_MM.lead,
    ),
    space(5),
    ...tableBlocks(
      [
        { head: 'What goes in', widthMm: widthMm * 0.44, bold: true },
        { head: 'Size', widthMm: widthMm * 0.28 },
        { head: 'Per kit', widthMm: widthMm * 0.14, align: 'end' },
        { head: 'In all', widthMm: widthMm * 0.14, align: 'end' },
      ],
      lines.map(({ what, size, count }) => [setFractions(what), size, `${count}`, `${count * kit.packing}`]),
    ),
  ];
}

const BETWEEN_MM = 6;
const PAD_MM = 4;

/** Labels two beside each other, all of one height, with an edge to cut along. */
function labelRows(input: KitLabelsInput, lines: readonly KitLine[], widthMm: number): Block[] {
  const labelMm = (widthMm - BETWEEN_MM) / 2;
  const label = (number: number) => labelBlock(input, lines, number, labelMm);
  return Array.from({ length: Math.ceil(input.kit.packing / 2) }, (_, row) => {
    const [left, right] = [2 * row + 1, 2 * row + 2];
    const pair = right > input.kit.packing ? [] : ([[labelMm + BETWEEN_MM, label(right)]] as const);
    return stackBlocks([besideBlocks([0, label(left)], ...pair), space(BETWEEN_MM)]);
  });
}

function labelBlock(
  { plan, kit }: KitLabelsInput,
  lines: readonly KitLine[],
  number: number,
  widthMm: number,
): Block {
  const inner = widthMm - 2 * PAD_MM;
  const words = (text: string, sizeMm: number, bold = false) =>
    textBlock(text, { widthMm: inner, sizeMm, bold });
  const spare = number > kit.kits ? ', spare' : '';
  const { marks, heightMm } = stackBlocks([
    space(PAD_MM),
    words(plan.name, TYPE_MM.small),
    space(1.5),
    words(`Kit ${number} of ${kit.packing}${spare}`, TYPE_MM.heading, true),
    space(1.5),
    words(boxesOf(kit), TYPE_MM.body, true),
    space(1.5),
    ...lines.flatMap(({ what, size, count }) => [
      words(setFractions(`${count} × ${what}${size === '' ? '' : `, ${size}`}`), TYPE_MM.small),
      space(0.8),
    ]),
    space(PAD_MM),
  ]);
  const moved = besideBlocks([PAD_MM, { marks, heightMm }]);
  const edge = areaMark('edge', boxRing({ left: 0, right: widthMm, bottom: -heightMm, top: 0 }));
  return { heightMm, marks: [edge, ...moved.marks] };
}
