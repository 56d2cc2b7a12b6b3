import { cautionsOf } from '../../shared/catalogue';
import { type ContentsFile, readContents } from '../../shared/contents-file';
import { clearanceOf, type FitRow, fitContents, gramsOf, type NeededRoom, neededRooms } from '../core/fit';
import { begunNew } from '../core/net';
import { ticksOfMm } from '../core/rows/lengths';
import type { BoxStyle } from '../core/styles/language/types';
import { STYLES } from '../core/styles/registry';
import { type Ticks, ticks, toMm } from '../core/units';
import { suggestName } from './nearest-name';
import { readStyleFile } from './read-style-file';
import { refuse, refuseInFile } from './refuse';
import type { DeskRefusal, Verb } from './verb';

export const verb: Verb = {
  usage: 'CONTENTS.json [--style-file STYLE.json …]',
  answers:
    'Ways to arrange the contents, the inside size they need, and easy sizes with the paper each one uses.',
  words: { least: 1, most: 1 },
  options: { 'style-file': 'many' },
  run: (given, desk) => {
    const [path = ''] = given.words;
    const text = desk.read(path);
    if (typeof text !== 'string') return [text];
    const file = readContents(text);
    if (!('contents' in file)) return file.map((refusal) => refuseInFile(path, refusal));
    const refused: DeskRefusal[] = [];
    const brought = (given.many['style-file'] ?? []).flatMap(
      (each) => readStyleFile(each, desk, refused) ?? [],
    );
    const styles = brought.length > 0 ? brought : stylesNamed(file.styles, refused);
    if (refused.length > 0) return refused;
    desk.print(JSON.stringify(describeFit(file, styles), null, 2));
    return [];
  },
};

/** The styles named, or all where none is. */
function stylesNamed(ids: readonly string[], refused: DeskRefusal[]): readonly BoxStyle[] {
  const known = STYLES.map(({ id }) => id);
  for (const id of ids)
    if (!known.includes(id))
      refused.push(
        refuse(
          'unknown-style',
          'styles',
          id,
          known.join(', '),
          `There is no style “${id}”. ${suggestName(id, known)}`,
        ),
      );
  return ids.length === 0 ? STYLES : STYLES.filter(({ id }) => ids.includes(id));
}

function describeFit(file: ContentsFile, styles: readonly BoxStyle[]) {
  const { contents, tool, sheet } = file;
  const none = ticks(0);
  const rooms = neededRooms(contents);
  const rows = fitContents(
    {
      contents,
      styles: styles.map(begunNew),
      caliperUm: file.caliperUm,
      slack: ticksOfMm(file.slackMm),
      ruler: { unit: tool.unit, finest: ticksOfMm(tool.finestMarkMm) },
      reach: ticksOfMm(tool.reachMm),
      held: Object.fromEntries(Object.entries(file.heldMm).map(([name, mm]) => [name, ticksOfMm(mm)])),
      paper: {
        id: 'sheet',
        across: ticksOfMm(sheet.acrossMm),
        up: ticksOfMm(sheet.upMm),
        grain: 'none',
        squaring: { left: none, right: none, near: none, far: none },
        onHand: 0,
      },
      tool: { longestCut: null, kerf: none, stack: 1, stages: 'free' },
    },
    rooms,
  );
  return {
    clearanceMm: toMm(clearanceOf(contents).length),
    grams: gramsOf(contents),
    arrangements: rooms.map(describeRoom),
    sizes: rows.map(describeRow),
    cautions: cautionsOf(contents).map(({ says }) => says),
  };
}

const describeRoom = ({ arrangement, inside }: NeededRoom) => ({
  pattern: arrangement.pattern,
  exact: arrangement.exact,
  sizeMm: arrangement.size.map((side) => Number(side.toFixed(3))),
  insideMm: inside.map(toMm),
  placed: arrangement.placed,
});

const mmByName = (lengths: Readonly<Record<string, Ticks>>) =>
  Object.fromEntries(Object.entries(lengths).map(([name, length]) => [name, toMm(length)]));

const describeRow = (row: FitRow) => ({
  style: row.styleId,
  arrangement: row.arrangement,
  sizesMm: mmByName(row.sizes),
  options: row.options,
  roughness: row.roughness,
  fenceSettings: row.settings,
  edges: row.edges,
  excessRoom: Number(row.excess.toFixed(4)),
  sheetsPerBox: row.sheetsPerBox,
  blanks: row.blanks.map(({ piece, across, up }) => ({ piece, acrossMm: toMm(across), upMm: toMm(up) })),
  marks: row.marks.map(({ piece, what, way, at, fromFarEnd, roughness }) => ({
    piece,
    what,
    way,
    atMm: toMm(at),
    from: way === 'across' ? (fromFarEnd ? 'right' : 'left') : fromFarEnd ? 'top' : 'bottom',
    roughness,
  })),
});
