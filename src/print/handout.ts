import { drawNetToFit } from '../core/draw/net/net-drawing';
import { drawLegend, inksIn } from '../core/draw/strokes/legend';
import { fileStem } from '../core/rows/text';
import type { Ruler } from '../core/units';
import {
  type Block,
  besideBlocks,
  drawingBlock,
  keepNext,
  ruleBlock,
  space,
  stackBlocks,
  textBlock,
} from './block';
import { linkBlock } from './code-block';
import { dressingBlocks } from './dressing-block';
import { type HandoutContent, type HandoutInput, handoutContent, KEPT_HEAD } from './handout-content';
import { drawFinished, lookBlocks, looksOf } from './look-steps';
import { columnOf, evenColumns, type PageColumn, pagesOf } from './page-flow';
import { photoBlock, photoRows } from './photo-blocks';
import { LEAST_NET_SHARE, type PaperName, type PrintDocument, TYPE_MM } from './print-document';
import { rowsOfSteps } from './step-rows';
import { tableBlocks } from './table-block';
import { placeTips } from './tip-places';

const PICTURE_MM = { widthMm: 80, heightMm: 62 }; // the finished box at the head: the maker's photo, or else drawn
/** Of the column's height: the larger are tried first. source: our own */
const NET_SHARES = [0.34, 0.3, 0.27, 0.24, 0.21, 0.18] as const;

/** A tutorial to hand out: what it is, what it needs, what is cut, every step with its picture, what goes on and in, care, and the way back to the recipe. */
export function printHandout(input: HandoutInput & { readonly paper: PaperName }): PrintDocument {
  const { recipe, paper, stamp } = input;
  const title = `${recipe.name}: how to make it`;
  return {
    name: `${fileStem(recipe.name, 'box')}-handout`,
    title,
    pages: pagesOf(columnsOf(input), paper, { title, code: stamp.code }),
    stamp,
  };
}

/** What to try another way is no reason for a page more: it is left out where it would take one. */
function columnsOf(input: HandoutInput & { readonly paper: PaperName }): readonly PageColumn[] {
  const waysWith = waysToSet(input);
  const [whole, short] = [true, false].map((others) => evenColumns(waysWith(others), input.paper));
  return short!.length < whole!.length ? short! : whole!;
}

/** The same blocks with larger and smaller nets, with or without other ways to make it. */
function waysToSet(
  input: HandoutInput & { readonly paper: PaperName },
): (otherWays: boolean) => readonly Block[][] {
  const { recipe, net, cards, ruler, paper, link, photos } = input;
  const others = photos.slice(1);
  const { widthMm, heightMm } = columnOf(paper);
  const content = handoutContent(input);
  const tips = placeTips(recipe.handout?.tips ?? [], cards);
  const words = (text: string, bold = false) => textBlock(text, { widthMm, sizeMm: TYPE_MM.body, bold });
  const heading = (text: string) =>
    keepNext(
      stackBlocks([space(5), textBlock(text, { widthMm, sizeMm: TYPE_MM.heading, bold: true }), space(1.5)]),
    );
  const list = (lines: readonly string[]) => lines.flatMap((line) => [words(`– ${line}`), space(1.5)]);
  const section = (head: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [heading(head), ...list(lines)];

  const steps = cards.map((card) =>
    rowsOfSteps(card, { ruler, paper, tipsOf: (step) => tips.at(card, step).map(({ says }) => says) }),
  );
  const before = [
    headOf(input, content, widthMm),
    ...section('You need', content.tools),
    heading('Cut'),
    ...cutsOf(content, ruler, widthMm),
    ...section('Before you begin', content.tips),
  ];
  const stepsWith = (netShare: number): Block[] =>
    cards.flatMap((card, at) => {
      const flat = () => {
        const drawn = drawNetToFit(
          card.piece,
          { widthMm, heightMm: heightMm * netShare },
          { ruler, textMm: TYPE_MM.number, faceUp: recipe.faceUp, least: LEAST_NET_SHARE },
        );
        return [
          keepNext(drawingBlock(drawn, widthMm)),
          space(3),
          drawLegend(inksIn([drawn]), widthMm, TYPE_MM.small),
          space(4),
        ];
      };
      return [
        heading(cards.length > 1 ? `Steps: ${card.piece.label}` : 'Steps'),
        ...(card.joins ? [] : flat()),
        ...(steps[at] ?? []),
      ];
    });
  const after = (otherWays: boolean): Block[] => [
    ...(recipe.dressings.length > 0
      ? [
          ruleBlock(widthMm),
          space(4),
          ...dressingBlocks({ net, dressings: recipe.dressings, mark: ruler.finest }, ruler, widthMm),
          ...looksOf(input).flatMap((look) => [heading(look.head), ...lookBlocks(look.steps, widthMm)]),
        ]
      : []),
    ...section(
      'What goes inside',
      content.inside.map(({ name, count }) => `${count} × ${name}`),
    ),
    ...section('Take care', content.cautions),
    ...section('Try it another way', otherWays ? content.variations : []),
    ...section(KEPT_HEAD, content.kept),
    ...(content.credits === '' ? [] : [heading('Thanks to'), words(content.credits)]),
    ...(link === undefined ? [] : [space(6), linkBlock(link, widthMm)]),
    ...(others.length > 0 ? [space(6), ...photoRows(others, widthMm)] : []),
  ];
  const bodies = NET_SHARES.map((share) => [...before, ...stepsWith(share)]);
  return (otherWays) => bodies.map((body) => [...body, ...after(otherWays)]);
}

/** What it is, beside the maker's first photo, or the box as it is drawn. */
function headOf(input: HandoutInput, content: HandoutContent, widthMm: number): Block {
  const [photo] = input.photos;
  const leftMm = widthMm - PICTURE_MM.widthMm;
  const words = (text: string) => textBlock(text, { widthMm: leftMm - 8, sizeMm: TYPE_MM.body });
  const head = stackBlocks([
    textBlock(content.title, { widthMm: leftMm - 8, sizeMm: TYPE_MM.title, bold: true }),
    space(3),
    words(content.about),
    space(2.5),
    words(content.effort),
  ]);
  const picture = photo
    ? photoBlock(photo, PICTURE_MM)
    : drawingBlock(drawFinished(input, PICTURE_MM), PICTURE_MM.widthMm);
  return besideBlocks([0, head], [leftMm, picture]);
}

const cutsOf = ({ cuts }: HandoutContent, { unit }: Ruler, widthMm: number): readonly Block[] =>
  tableBlocks(
    [
      { head: 'Cut', widthMm: widthMm * 0.4, bold: true },
      { head: unit === 'in' ? 'inches' : 'millimeters', widthMm: widthMm * 0.32 },
      { head: unit === 'in' ? 'millimeters' : 'inches', widthMm: widthMm * 0.28 },
    ],
    cuts.map(({ what, size, otherSize }) => [what, size, otherSize]),
  );
