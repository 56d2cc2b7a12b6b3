import type { Photo, Recipe, Tool } from '../../shared/workbook';
import { newWay } from '../core/checks/new-way';
import { newSizes } from '../core/net';
import { OWN_NET } from '../core/styles/boxes/own-net';
import { defaultChoices } from '../core/styles/language/define';
import type { BoxStyle, Chosen } from '../core/styles/language/types';
import { STYLES, styleById } from '../core/styles/registry';
import { type LengthUnit, millimetres, type Ticks, USUAL_FINEST } from '../core/units';
import { suggestName } from './nearest-name';
import { chooseRow, readWorkbookFile } from './read-file';
import { type OwnFile, readOwnFile } from './read-own-file';
import { keepSize, readCaliper, readSetting, USUAL_CALIPER_UM, writtenInInches } from './read-size';
import { readStyleFile } from './read-style-file';
import { refuse } from './refuse';
import { toolOfRecipe } from './tool-of-event';
import type { Desk, DeskRefusal, Given } from './verb';

/** A box as it was asked for at the desk. `sizes` holds only what was given; the style's defaults fill the rest. */
export interface AskedBox {
  readonly style: BoxStyle;
  readonly sizes: Readonly<Record<string, Ticks>>;
  /** Those of them that somebody set; the others are what a new box begins with. */
  readonly set: Readonly<Record<string, Ticks>>;
  readonly chosen: Chosen;
  readonly caliperUm: number;
  readonly unit: LengthUnit;
  /** What it was read from, if from a file. */
  readonly recipe: Recipe | null;
  readonly photos: readonly Photo[];
  readonly tool: Tool | undefined;
  /** A net of the maker's own, in place of a style's. */
  readonly own: OwnFile | null;
}

/** What every verb about one box takes. */
export const BOX_OPTIONS = {
  style: 'one',
  'style-file': 'one',
  set: 'many',
  option: 'many',
  caliper: 'one',
  unit: 'one',
  recipe: 'one',
  fold: 'one',
  edges: 'one',
  'fold-unit': 'one',
} as const;
export const BOX_USAGE =
  '(--style ID | --style-file STYLE.json | WORKBOOK.json [--recipe ID] | --fold FILE [--edges 3=V,5=C] [--fold-unit mm|in|cm|pt|m|um]) [--set SYMBOL=LENGTH …] [--option NAME=CHOICE …] [--caliper LENGTH] [--unit in|mm]';

/** The box that the words and options ask for, or everything that is wrong with them. Options override the recipe. */
export function readBox(given: Given, desk: Desk): AskedBox | readonly DeskRefusal[] {
  const refused: DeskRefusal[] = [];
  const [file] = given.words;
  const workbook = file === undefined ? null : readWorkbookFile(file, desk, refused);
  const recipe = workbook && chooseRow(workbook.recipes, given.one['recipe'], 'recipe', file ?? '', refused);
  if (refused.length > 0) return refused;
  const own = readOwnFile(given, desk, recipe, refused);
  if (refused.length > 0) return refused;
  const style = own
    ? OWN_NET
    : (readOwnStyle(given, desk, refused) ??
      (refused.length > 0 ? undefined : readStyle(given.one['style'] ?? recipe?.styleId, refused)));
  if (!style) return refused;

  const settings = given.many['set'] ?? [];
  const tool = (workbook && recipe && toolOfRecipe(recipe.id, workbook)) ?? workbook?.tools[0];
  const unsaid = settings.length === 0 || settings.some(writtenInInches) ? 'in' : 'mm';
  const unit = readUnit(given.one['unit'] ?? tool?.unit ?? unsaid, refused);
  const sizes: Record<string, Ticks> = {};
  for (const [symbol, mm] of Object.entries(recipe?.sizesMm ?? {}))
    keepSize(sizes, symbol, millimetres(mm), style, refused);
  for (const setting of settings) readSetting(setting, unit, sizes, style, refused);
  // a box out of no workbook is a new one
  const set = { ...sizes };
  const fresh = recipe ? undefined : newWay(style, sizes, USUAL_CALIPER_UM);
  if (fresh) Object.assign(sizes, newSizes(style, sizes, USUAL_FINEST[unit]));
  const chosen = { ...defaultChoices(style), ...(recipe?.options ?? fresh) };
  for (const choice of given.many['option'] ?? []) readChoice(choice, chosen, style, refused);
  const caliper = given.one['caliper'];
  const caliperUm =
    caliper === undefined ? (recipe?.caliperUm ?? USUAL_CALIPER_UM) : readCaliper(caliper, unit, refused);
  const photos = workbook?.photos.filter(({ recipeId }) => recipeId === recipe?.id) ?? [];
  return refused.length > 0
    ? refused
    : { style, sizes, set, chosen, caliperUm, unit, recipe, photos, tool, own };
}

/** The style of `--style-file`; null if none is given, or if it was refused. */
function readOwnStyle(given: Given, desk: Desk, refused: DeskRefusal[]): BoxStyle | null {
  const path = given.one['style-file'];
  if (path === undefined) return null;
  if (given.words.length > 0 || given.one['style'] !== undefined) {
    const says = '--style-file brings a style of its own: leave out --style and the workbook.';
    refused.push(refuse('style-and-file', '--style-file', path, 'one of them', says));
    return null;
  }
  return readStyleFile(path, desk, refused);
}

function readStyle(id: string | undefined, refused: DeskRefusal[]): BoxStyle | undefined {
  const ids = STYLES.map((style) => style.id);
  const style = id === undefined ? undefined : styleById(id);
  if (id === undefined)
    refused.push(
      refuse(
        'no-style',
        '--style',
        '',
        ids.join(', '),
        `Say which box: --style and one of ${ids.join(', ')}.`,
      ),
    );
  else if (!style)
    refused.push(
      refuse(
        'unknown-style',
        '--style',
        id,
        ids.join(', '),
        `There is no style “${id}”. ${suggestName(id, ids)}`,
      ),
    );
  return style;
}

function readUnit(unit: string, refused: DeskRefusal[]): LengthUnit {
  if (unit === 'in' || unit === 'mm') return unit;
  refused.push(refuse('unknown-unit', '--unit', unit, 'in, mm', `--unit is in or mm, not “${unit}”.`));
  return 'mm';
}

function readChoice(
  written: string,
  chosen: Record<string, string>,
  style: BoxStyle,
  refused: DeskRefusal[],
): void {
  const [name = '', choice = ''] = written.split('=', 2);
  const options = style.options ?? {};
  const choices = Object.hasOwn(options, name) ? options[name]?.choices.map(({ id }) => id) : undefined;
  if (choices?.includes(choice)) {
    chosen[name] = choice;
    return;
  }
  const names = choices ?? Object.keys(options);
  const says = choices
    ? `${name} is one of ${choices.join(', ')}, not “${choice}”.`
    : `${style.id} has no option “${name}”. ${names.length > 0 ? suggestName(name, names) : 'It has none.'}`;
  refused.push(
    refuse(
      choices ? 'unknown-choice' : 'unknown-option',
      `--option ${name}`,
      written,
      names.join(', '),
      says,
    ),
  );
}
