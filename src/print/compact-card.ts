import { type BoxCard, CAUTIONS, type CardStep, JOINING } from '../core/bench';
import { drawFolded } from '../core/draw/folded-drawing';
import { drawNetToFit } from '../core/draw/net/net-drawing';
import { pictureOfStep } from '../core/draw/step/step-picture';
import { drawLegend, inksIn } from '../core/draw/strokes/legend';
import { wrapText } from '../core/draw/strokes/letters';
import { centredText, lineMark, moveMarks } from '../core/draw/strokes/marks';
import { setFractions } from '../core/draw/strokes/set-fractions';
import type { Drawing } from '../core/draw/strokes/types';
import type { Ruler } from '../core/units';
import type { BenchCardInput } from './bench-card';
import { type Block, besideBlocks, drawingBlock, ruleBlock, space, stackBlocks, textBlock } from './block';
import { cardHead } from './card-head';
import { linkBlock, smallCodeBlock } from './code-block';
import { cutPictures, type DressingsOfBox, dressingLists } from './dressing-block';
import { freeRoom } from './free-room';
import { narrowSteps } from './look-steps';
import { columnOf, type PageColumn } from './page-flow';
import { heightOf, TwoColumns } from './two-columns';

/** Everything on a compact card is at least 9 pt; the number of a step is a little larger. */
const TYPE = { title: 5.6, lead: 3.4, body: 3.2, number: 4.9, step: 4.2 } as const;

const NUMBER_MM = 8; // tick box and number before a step
const LEADING = 1.3;
const HEAD_MM = 56; // name, sizes and the closed piece, beside the net
/** Of the page's height, at most, and the room of a picture: larger where that takes no more pages. source: our own */
const NET_SHARES = [0.4, 0.32, 0.25] as const;
const PICTURES_MM = [
  { widthMm: 42, heightMm: 27 },
  { widthMm: 34, heightMm: 20 },
  { widthMm: 27, heightMm: 15 },
] as const;
const LEAST_SHARE = 0.45; // a net smaller than this beside its numbers cannot be read
const CLOSED_MM = { widthMm: 40, heightMm: 26 };
const CLOSED_OF_MANY_MM = { widthMm: 30, heightMm: 16 }; // where a box has many pieces
const BESIDE_MM = 3;
const LEAST_ROW_MM = 12; // room for a row under its heading
const FIRST_LINES = 10; // of a step, beside its picture; the rest may run on into the next column
const LEAST_STEPS_MM = 45; // room for steps under a net; else both go to the next page

/** The steps on the fewest pages: for each piece its net with its numbers, then the acts in two columns, each with a small picture. */
export function compactColumns(input: BenchCardInput): PageColumn[] {
  const drawn = drawnOnce();
  const lay = (netShare: number, pictureMm: Room) => columnsWith(input, { netShare, pictureMm, drawn });
  const least = lay(NET_SHARES[2], PICTURES_MM[2]);
  for (const pictureMm of PICTURES_MM)
    for (const netShare of NET_SHARES) {
      const laid = lay(netShare, pictureMm);
      if (laid.columns.length <= least.columns.length && laid.hasCode >= least.hasCode) return laid.columns;
    }
  return least.columns;
}

/** Each picture of a card is drawn once, however often its pages are laid out. */
function drawnOnce(): Drawn {
  const known = new Map<object, Map<string, Drawing | null>>();
  return (of, where, draw) => {
    const those = known.get(of) ?? new Map<string, Drawing | null>();
    known.set(of, those);
    const found = those.get(where);
    if (found !== undefined) return found;
    const made = draw();
    those.set(where, made);
    return made;
  };
}

type Drawn = (of: object, where: string, draw: () => Drawing | null) => Drawing | null;

interface Laid {
  readonly columns: PageColumn[];
  readonly hasCode: boolean;
}

interface Shares {
  readonly netShare: number;
  readonly pictureMm: Room;
  readonly drawn: Drawn;
}

function columnsWith(input: BenchCardInput, { netShare, pictureMm, drawn }: Shares): Laid {
  const pages = new TwoColumns(columnOf(input.paper));
  const said = new Set<string>();
  for (const card of input.cards) {
    const isLast = card === input.cards.at(-1);
    const steps = [
      ...card.steps.flatMap((step, i) =>
        compactStep({ card, step, number: i + 1, said, pictureMm, drawn }, pages.columnMm),
      ),
      ...(isLast ? careOf(input, pages.columnMm) : []),
    ];
    pages.acrossWith(headOf(card, input, netShare, drawn), Math.min(LEAST_STEPS_MM, heightOf(steps) / 2));
    pages.inColumns(steps);
  }
  if (input.dressed) putLooks(pages, input.dressed, input.ruler);
  if (input.link === undefined) return { columns: pages.pages(), hasCode: true };
  const isBelow = pages.ifRoom(stackBlocks([space(3), linkBlock(input.link, pages.widthMm)]));
  return isBelow || input.link === null
    ? { columns: pages.pages(), hasCode: isBelow }
    : withCode(pages.pages(), input.link, input);
}

/** Each look of the box: what is cut for it, how it goes on, and the pieces with slots or scores at a size to cut by. */
function putLooks(pages: TwoColumns, dressed: DressingsOfBox, ruler: Ruler): void {
  const { widthMm, columnMm } = pages;
  for (const { head, rows, dressing } of dressingLists(dressed, ruler)) {
    const lines = rows.map(([name = '', cut = '', perBox = '1']) =>
      [name, cut, perBox === '1' ? '' : `${perBox} per box`].filter((part) => part !== '').join(', '),
    );
    const title = textBlock(head, { widthMm, sizeMm: TYPE.step, bold: true });
    pages.acrossWith(stackBlocks([ruleBlock(widthMm), space(2), title, space(1.5)]), LEAST_ROW_MM);
    pages.inColumns([
      ...lines.map((line) => stackBlocks([bodyText(line, columnMm), space(0.6)])),
      space(1),
      ...narrowSteps(dressed, dressing, ruler, columnMm, TYPE.body),
    ]);
    for (const block of cutPictures(dressed.net, dressing, dressed.mark, ruler, widthMm))
      pages.acrossWith(block, block.keepsNext ? LEAST_ROW_MM : 0);
  }
}

/** The code in an empty corner, beside a net or below the shorter column; left out where none is large enough. */
function withCode(pages: PageColumn[], link: string, { paper }: BenchCardInput): Laid {
  const code = smallCodeBlock(link);
  if (!code) return { columns: pages, hasCode: false };
  const size = { widthMm: code.widthMm, heightMm: code.block.heightMm };
  const places = pages.map(({ marks }) => freeRoom(marks, columnOf(paper), size));
  const page = places.findIndex((place) => place !== null);
  const columns = pages.map((column, at) => {
    const place = places[at];
    if (at !== page || !place) return column;
    return { ...column, marks: [...column.marks, ...moveMarks(code.block.marks, ...place)] };
  });
  return { columns, hasCode: page >= 0 };
}

/** Name, sizes, what to lay ready and the closed piece on the left; the net with its numbers on the right. */
function headOf(card: BoxCard, input: BenchCardInput, netShare: number, drawn: Drawn): Block {
  const { piece, joins } = card;
  const { widthMm, heightMm } = columnOf(input.paper);
  const { title, lines } = cardHead(card, input);
  const isFirst = card === input.cards[0];
  const words = (text: string, sizeMm: number, bold = false): Block =>
    textBlock(setFractions(text), { widthMm: HEAD_MM, sizeMm, bold, leading: LEADING });
  const roomMm = input.cards.length > 2 ? CLOSED_OF_MANY_MM : CLOSED_MM;
  const closed = drawFolded(piece, { from: 'standing', space: roomMm });
  const left = stackBlocks([
    words(title, TYPE.title, true),
    ...lines.flatMap((line) => [space(1), words(line, TYPE.lead)]),
    ...(joins ? [space(1), words(JOINING, TYPE.lead, true)] : []),
    space(2),
    drawingBlock(closed, HEAD_MM),
    ...(isFirst ? [space(1.5), TRUE_BAR] : []),
  ]);
  const netMm = {
    widthMm: widthMm - HEAD_MM - BESIDE_MM,
    heightMm: heightMm * netShare * (input.cards.length > 2 ? 0.6 : input.cards.length > 1 ? 0.8 : 1),
  };
  return stackBlocks([
    ...(isFirst ? [] : [ruleBlock(widthMm), space(2.5)]),
    besideBlocks(
      [0, left],
      ...(joins
        ? []
        : [[HEAD_MM + BESIDE_MM, drawingBlock(netOnce(card, input, netMm, drawn), netMm.widthMm)] as const]),
    ),
    space(1.5),
    ...(isFirst ? [legendOf(input, netMm, drawn), space(1.5)] : []),
  ]);
}

type Room = { readonly widthMm: number; readonly heightMm: number };

const netOnce = (card: BoxCard, input: BenchCardInput, room: Room, drawn: Drawn): Drawing =>
  drawn(card, `${room.widthMm} ${room.heightMm}`, () => netOf(card, input, room)) ?? netOf(card, input, room);

/** What a crowded net gives up: the numbers of line ends, then all of them; the words have each. */
const SPARING = [{}, { ends: false }, { numbers: false }] as const;

/** The net with as many of its numbers as leave it room. */
function netOf({ piece }: BoxCard, { ruler, faceUp, grain }: BenchCardInput, room: Room): Drawing {
  const ways = SPARING.map((spared) =>
    drawNetToFit(piece, room, {
      ruler,
      textMm: TYPE.number,
      faceUp,
      grain,
      show: { otherUnit: false, ...spared },
    }),
  );
  const plain = ways.at(-1)!;
  return ways.find(({ scale }) => scale >= LEAST_SHARE * plain.scale) ?? plain;
}

/** What the lines of all the nets mean, once. */
function legendOf(input: BenchCardInput, room: Room, drawn: Drawn): Block {
  const { widthMm } = columnOf(input.paper);
  const nets = input.cards.filter(({ joins }) => !joins).map((card) => netOnce(card, input, room, drawn));
  return drawLegend(inksIn(nets), widthMm, TYPE.body);
}

interface PrintedStep {
  readonly card: BoxCard;
  readonly step: CardStep;
  readonly number: number;
  /** Tips printed so far: each is printed once. */
  readonly said: Set<string>;
  /** Room for its picture. */
  readonly pictureMm: Room;
  readonly drawn: Drawn;
}

/** The step's number and words, its picture on the right; the lines of a long one after the first few as blocks of their own. */
function compactStep({ card, step, number, said, pictureMm, drawn }: PrintedStep, columnMm: number): Block[] {
  const picture = drawn(step, `${pictureMm.widthMm}`, () => pictureOf(card, step, pictureMm));
  const wordsMm = columnMm - NUMBER_MM - (picture ? pictureMm.widthMm + BESIDE_MM : 0);
  const tips = step.tips.filter((tip) => !said.has(tip));
  for (const tip of tips) said.add(tip);
  const lines = [step.headline, ...step.details, ...tips.map((tip) => `Tip: ${tip}`)].flatMap((text) =>
    wrapText(setFractions(text), wordsMm, TYPE.body),
  );
  const lineBlocks = lines.map((line): Block => {
    const { marks } = bodyText(line, wordsMm);
    return { heightMm: LEADING * TYPE.body, marks: moveMarks(marks, NUMBER_MM, 0) };
  });
  const head = besideBlocks(
    [0, textBlock(`${number}`, { widthMm: NUMBER_MM, sizeMm: TYPE.step, bold: true })],
    [0, stackBlocks(lineBlocks.slice(0, FIRST_LINES))],
    ...(picture ? [[columnMm - pictureMm.widthMm, drawingBlock(picture, pictureMm.widthMm)] as const] : []),
  );
  const rest = lineBlocks.slice(FIRST_LINES);
  const last = rest.pop();
  const after = (block: Block): Block => stackBlocks([block, space(1)]);
  return last ? [head, ...rest, after(last)] : [after(head)];
}

const bodyText = (text: string, widthMm: number): Block =>
  textBlock(setFractions(text), { widthMm, sizeMm: TYPE.body, leading: LEADING });

/** Where the card lies differently or a fold is under way, a picture says it best; words alone are enough for the rest. */
function pictureOf(card: BoxCard, step: CardStep, pictureMm: Room): Drawing | null {
  const acts = card.program.ops.slice(step.ops.from, step.ops.to);
  const isShown =
    step.kind === 'score' ? step.headline.endsWith(step.alone) : acts.some(({ op }) => op === 'close');
  return isShown ? pictureOfStep(card, step, pictureMm, { textMm: TYPE.body, plain: true }) : null;
}

/** What stands once below all steps: care with blades, glue and what goes inside, and the maker's notes. */
function careOf(input: BenchCardInput, columnMm: number): Block[] {
  const codes = new Set(input.cards.flatMap(({ steps }) => steps.flatMap(({ cautions }) => cautions)));
  const notes = input.notes.trim();
  const care = [...[...codes].map((code) => CAUTIONS[code]), ...(input.cautions ?? [])];
  return [...care, ...(notes === '' ? [] : [notes])].map((text) =>
    stackBlocks([bodyText(text, columnMm), space(1)]),
  );
}

/** As long as it says, if the page was printed at its true size. */
const TRUE_BAR: Block = {
  heightMm: 5.5,
  marks: [
    lineMark('edge', [[0, -5], [50.8, -5]], 'bar 2 in across'), // biome-ignore format: one stroke
    ...[0, 50.8].map((x) => lineMark('edge', [[x, -6], [x, -4]])), // biome-ignore format: one stroke
    centredText('2 in, if printed at 100 %', [25.4, -2.4], TYPE.body),
  ],
};
