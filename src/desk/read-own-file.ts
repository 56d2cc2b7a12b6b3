import type { Recipe } from '../../shared/workbook';
import { type FoldUnit, flatFrames, isUnitless } from '../core/net/fold-frames';
import { sayFoldRefusal } from '../core/net/fold-words';
import { type LineChoice, readOwnNet } from '../core/net/own-net';
import { FOLD_UNITS_MM } from '../core/rows/fold-file';
import { OWN_NET } from '../core/styles/boxes/own-net';
import { refuse } from './refuse';
import type { Desk, DeskRefusal, Given } from './verb';

/** A net of the maker's own: its text with every question answered. */
export interface OwnFile {
  readonly text: string;
  readonly title: string;
}

const CHOICES: readonly string[] = ['C', 'V', 'M', 'F'];
const isUnit = (written: string): written is FoldUnit => Object.hasOwn(FOLD_UNITS_MM, written);

/** The own net that `--fold` or the recipe brings; null if neither does, or if it was refused. */
export function readOwnFile(
  given: Given,
  desk: Desk,
  recipe: Recipe | null,
  refused: DeskRefusal[],
): OwnFile | null {
  const path = given.one['fold'];
  const of = path ?? 'ownNet';
  if (path === undefined && (recipe?.styleId !== OWN_NET.id || given.one['style'] !== undefined)) return null;
  if (
    path !== undefined &&
    (recipe !== null || given.one['style'] !== undefined || given.one['style-file'] !== undefined)
  ) {
    const says = '--fold brings a box of its own: leave out --style, --style-file and the workbook.';
    refused.push(refuse('fold-and-style', '--fold', path, 'one of them', says));
    return null;
  }
  const text = path === undefined ? (recipe?.ownNet ?? '') : desk.read(path);
  if (typeof text !== 'string') {
    refused.push(text);
    return null;
  }
  const unit = given.one['fold-unit'];
  if (unit !== undefined && !isUnit(unit)) {
    const units = Object.keys(FOLD_UNITS_MM).join(', ');
    refused.push(
      refuse('unknown-unit', '--fold-unit', unit, units, `--fold-unit is one of ${units}, not “${unit}”.`),
    );
    return null;
  }
  const lines = readLines(given.one['edges'], refused);
  if (lines === null) return null;
  // What a recipe keeps was asked about when it came in.
  if (path !== undefined && unit === undefined && isUnitless(text)) {
    refused.push(refuseUnitless(path, text));
    return null;
  }
  const reading = readOwnNet(text, { lines, unit });
  if (reading.is === 'net') return { text: reading.text, title: reading.title || OWN_NET.name };
  if (reading.is === 'refused')
    refused.push(
      ...reading.refusals.map((refusal) =>
        refuse(
          refusal.code,
          `${of}: ${refusal.path}`,
          refusal.found,
          refusal.expected,
          sayFoldRefusal(refusal),
        ),
      ),
    );
  else {
    const names = reading.open.map(({ name }) => name);
    const listed = reading.open.map(({ name, a, b }) => `${name} from ${a.join(', ')} to ${b.join(', ')}`);
    const says = `${of} does not say what ${names.length === 1 ? 'this line is' : 'these lines are'}: ${listed.join('; ')}. Say it with --edges ${names.map((name) => `${name}=V`).join(',')} (C cut, V valley, M mountain, F scored and left flat).`;
    refused.push(refuse('unassigned-edge', of, names.join(','), 'C, V, M or F for each', says));
  }
  return null;
}

/** A drawing of 4 × 3 may be a seed packet in inches or a crumb in millimeters: nobody guesses. */
function refuseUnitless(path: string, text: string): DeskRefusal {
  const reading = flatFrames(text);
  const corners = reading.ok ? reading.frames.flatMap(({ frame }) => frame.vertices_coords) : [];
  const spread = (numbers: readonly number[]) =>
    numbers.reduce((most, one) => Math.max(most, one), -Infinity) -
    numbers.reduce((least, one) => Math.min(least, one), Infinity);
  const size = `${+spread(corners.map(([x = 0]) => x)).toFixed(3)} × ${+spread(corners.map(([, y = 0]) => y)).toFixed(3)}`;
  const units = Object.keys(FOLD_UNITS_MM).join(', ');
  const says = `${path} does not name its unit, so ${size} could be any size. Add --fold-unit with one of ${units}.`;
  return refuse('no-unit', `${path}: frame_unit`, size, units, says);
}

/** `3=V,5=C`, or null with the reason added. */
function readLines(written: string | undefined, refused: DeskRefusal[]): Record<string, LineChoice> | null {
  const lines: Record<string, LineChoice> = {};
  for (const part of written === undefined ? [] : written.split(',')) {
    const [, name, choice] = /^\s*(\d+(?:\.\d+)?)\s*=\s*([A-Za-z])\s*$/.exec(part) ?? [];
    const known = CHOICES.find((each) => each === choice?.toUpperCase());
    if (name === undefined || known === undefined) {
      const says = `--edges takes LINE=C, V, M or F with commas between, such as 3=V,5=C, not “${part}”.`;
      refused.push(refuse('not-an-edge', '--edges', part, '3=V,5=C', says));
      return null;
    }
    lines[name] = known as LineChoice;
  }
  return lines;
}
