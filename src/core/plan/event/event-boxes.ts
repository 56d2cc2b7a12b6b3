import { type FlatSize, fitPiece } from '../../dress';
import { closeOfHundred } from '../../net/closing-share';
import { fitsOf } from '../../net/lay-fits';
import { layNet } from '../../net/lay-net';
import { ownBoxOf } from '../../net/own-net';
import type { BoxNet } from '../../net/types';
import type { Dressing, DressingPiece, EventLine, FavorEvent, Recipe } from '../../rows';
import { ticksOfMm } from '../../rows/lengths';
import { OWN_NET } from '../../styles/boxes/own-net';
import type { BoxStyle } from '../../styles/language/types';
import { styleById } from '../../styles/registry';
import type { Ticks } from '../../units';
import { spoiledOfLine } from '../run/run-counts';
import { nameAccuracy } from './accuracy';
import { remark } from './remarks';
import { addSpareKits, addSpares, canMakeUp, type MakingCount } from './spares';
import type { EventFinding } from './types';

/** One line of an event with all that its boxes are made from. */
export interface EventBox extends MakingCount {
  /** Of the spares, those made because more were spoiled at the bench than the rule allowed for. */
  readonly again: number;
  /** Of 100 such boxes, those that close at the accuracy the spares go by; null: they go by none, or the style has no fit that marks could spoil. */
  readonly closes: number | null;
  readonly line: EventLine;
  readonly recipe: Recipe;
  readonly dressing: Dressing | null;
  /** The dressing's cut pieces at the sizes they have on this box. */
  readonly pieces: readonly { readonly piece: DressingPiece; readonly size: FlatSize }[];
  readonly paperId: string | null;
  readonly net: BoxNet;
}

/** Saved millimeters by symbol as ticks. */
const sizesOf = (recipe: Recipe): Readonly<Record<string, Ticks>> =>
  Object.fromEntries(Object.entries(recipe.sizesMm).map(([symbol, mm]) => [symbol, ticksOfMm(mm)]));

/** The style a recipe names; a net of the maker's own has one that fixes nothing. */
export const styleOfRecipe = (recipe: Pick<Recipe, 'styleId'>): BoxStyle | undefined =>
  recipe.styleId === OWN_NET.id ? OWN_NET : styleById(recipe.styleId);

/** Own nets are read from text, which takes a while; rows are never changed in place. */
const ownNets = new WeakMap<Recipe, BoxNet | null>();

function ownNetOf(recipe: Recipe): BoxNet | null {
  const known = ownNets.get(recipe);
  if (known !== undefined) return known;
  const net = recipe.ownNet === undefined ? null : ownBoxOf(recipe.ownNet, recipe.caliperUm);
  ownNets.set(recipe, net);
  return net;
}

/** A recipe's box laid flat; null when its style is not known here, or its own net cannot be read. */
export function netOfRecipe(recipe: Recipe): BoxNet | null {
  if (recipe.styleId === OWN_NET.id) return ownNetOf(recipe);
  const style = styleById(recipe.styleId);
  if (!style) return null;
  const { options, caliperUm, markMm } = recipe;
  return layNet(style, {
    sizes: sizesOf(recipe),
    options,
    caliperUm,
    ...(markMm === undefined ? {} : { mark: ticksOfMm(markMm) }),
  });
}

/** Every line of the event as boxes, spares counted; lines whose recipe, style or dressing is gone are told of. */
export function boxesOfEvent(
  event: FavorEvent,
  recipes: readonly Recipe[],
  mark: Ticks,
): { readonly boxes: readonly EventBox[]; readonly findings: readonly EventFinding[] } {
  const findings: EventFinding[] = [];
  const boxes = event.lines.flatMap((line): EventBox[] => {
    const recipe = recipes.find(({ id }) => id === line.recipeId);
    if (!recipe) {
      findings.push(remark('recipe-missing', line.id, line.recipeId));
      return [];
    }
    const net = netOfRecipe(recipe);
    if (!net) {
      findings.push(remark('style-unknown', line.id, recipe.name));
      return [];
    }
    const dressing = recipe.dressings.find(({ id }) => id === line.dressingId) ?? null;
    if (line.dressingId !== null && !dressing)
      findings.push(remark('dressing-missing', line.id, recipe.name));
    const pieces = (dressing?.pieces ?? []).flatMap((piece) => {
      const size = fitPiece(net, piece, mark);
      if (!size) findings.push(remark('piece-does-not-fit', line.id, piece.name));
      return size ? [{ piece, size }] : [];
    });
    const paperId = line.paperId ?? recipe.paperId;
    const closes = closesOf(event, recipe, net);
    findings.push(...findClosing(event, line, recipe, closes));
    return [{ line, recipe, dressing, pieces, paperId, net, closes, ...countLine(event, line, closes) }];
  });
  return { boxes, findings };
}

function closesOf({ spares: { offByMm } }: FavorEvent, recipe: Recipe, net: BoxNet): number | null {
  const style = styleOfRecipe(recipe);
  if (offByMm === undefined || !style) return null;
  const fits = fitsOf(style, net.values, net.options);
  return fits.length === 0 ? null : closeOfHundred(fits, ticksOfMm(offByMm));
}

/** Where spares were to go by accuracy and cannot. */
function findClosing(
  { spares: { offByMm } }: FavorEvent,
  line: EventLine,
  { name }: Recipe,
  closes: number | null,
): readonly EventFinding[] {
  if (offByMm === undefined) return [];
  if (closes === null) return [remark('closing-unknown', line.id, name)];
  if (canMakeUp(closes)) return [];
  const facts = { offBy: { text: nameAccuracy(offByMm) }, closes: { count: closes } };
  return [remark('too-few-close', line.id, name, facts)];
}

/** Practice is once for each recipe: with the first line that has it; a class shows some of each. Boxes spoiled beyond the spares are made again. */
function countLine(
  { kits, lesson, lines, spares, run }: FavorEvent,
  line: EventLine,
  closes: number | null,
): MakingCount & Pick<EventBox, 'again'> {
  const isFirst = lines.find(({ recipeId }) => recipeId === line.recipeId) === line;
  const shown = kits && lesson ? lesson.samples + lesson.demonstrations : 0;
  const rule = { ...spares, practice: (isFirst ? (spares.practice ?? 0) : 0) + shown };
  const counted = kits ? addSpareKits(kits, line.count, rule, closes) : addSpares(line.count, rule, closes);
  const again = Math.max(0, spoiledOfLine(run, line.id) - counted.spares);
  return { ...counted, again, spares: counted.spares + again, making: counted.making + again };
}
