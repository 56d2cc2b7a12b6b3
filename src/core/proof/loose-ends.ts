import { panelWords } from '../net/panel-words';
import type { StyleRefusal } from '../style-file/style-refusal';
import { type BoxStyle, piecesOf } from '../styles';
import { panelsFolded, turns } from '../styles/language/folding';
import type { PieceSpec } from '../styles/language/types';
import { everyChoice } from '../styles/shapes/choices';

/**
 * What a style may still lack though it folds as drawn: tabs and bottom flaps that nothing holds, panels that no step folds, corners that no tab
 * holds. The proof does not ask for these, since a ribbon or another piece may hold them.
 */
export function looseEnds(style: BoxStyle): readonly StyleRefusal[] {
  const found = new Map<string, StyleRefusal>();
  for (const chosen of everyChoice(style)) {
    const pieces = style.whole === undefined ? piecesOf(style, chosen) : { whole: style.whole };
    const isAlone = Object.keys(pieces).length === 1;
    for (const [id, piece] of Object.entries(pieces))
      for (const loose of [...loosePanels(id, piece, isAlone), ...openCorners(id, piece)])
        found.set(`${loose.code} ${loose.path}`, loose);
  }
  return [...found.values()];
}

type Panels = PieceSpec['panels'];

const parentOf = (panels: Panels, panel: string): string | undefined => panels[panel]?.on?.split('.')[0];

function loosePanels(id: string, piece: PieceSpec, isAlone: boolean): readonly StyleRefusal[] {
  const { panels, joints, closing } = piece;
  const folded = new Set(panelsFolded(closing));
  const glued = new Set(joints.flatMap(({ panel, onto }) => [panel, onto]));
  return Object.entries(panels).flatMap(([name, panel]): StyleRefusal[] => {
    const { role } = panel;
    const told = { path: `${id}.${name}`, facts: { panel: panelWords(name) } };
    const isFree =
      (role === 'glueTab' && !glued.has(name)) ||
      (role === 'bottomFlap' && isAlone && !glued.has(name) && !isLocked(piece, name, glued));
    return [
      ...(isFree
        ? [
            {
              ...told,
              code: 'glued-to-nothing',
              says: 'The {panel} isn’t glued to anything when the box is closed.',
              remedy: 'Add the panel it should lie on, change its size, or choose what it is glued to.',
            },
          ]
        : []),
      ...(turns(panel) && !folded.has(name)
        ? [
            {
              ...told,
              code: 'never-folded',
              says: 'No step folds the {panel}.',
              remedy: 'Add a step for it to the folding order.',
            },
          ]
        : []),
    ];
  });
}

/** A flap held without glue of its own: what hangs on it is glued, or a tongue locks the layers it is in. */
const isLocked = ({ panels, overlaps = [] }: PieceSpec, flap: string, glued: ReadonlySet<string>): boolean =>
  [...glued].some((name) => parentOf(panels, name) === flap) ||
  overlaps.some(
    (layers) => layers.includes(flap) && layers.some((name) => panels[name]?.role === 'lockFlap'),
  );

/** Walls that meet at a seam where nothing holds them: no joint, no cardstock folded round from one to the other, no panel against both. */
function openCorners(id: string, { panels, joints, seams = [], creases = [], overlaps = [] }: PieceSpec) {
  const hung = new Set<string>(Object.values(panels).flatMap(({ on }) => on ?? []));
  const creased = new Set<string>(creases.flatMap(({ between }) => between));
  const runsOn = (edge: string) => hung.has(edge) || creased.has(edge);
  const lies = [...overlaps, ...joints.map(({ panel, onto }) => [panel, onto])];
  const isHeld = (one: string, other: string): boolean =>
    lies.some(
      (layers) =>
        layers.includes(other) && layers.some((name) => name === one || parentOf(panels, name) === one),
    );
  return seams.flatMap(([a, b]): StyleRefusal[] => {
    const [one = '', other = ''] = [a, b].map((where) => where.split('.')[0] ?? '');
    if (panels[one]?.role !== 'wall' || panels[other]?.role !== 'wall') return [];
    if ((runsOn(a) && runsOn(b)) || isHeld(one, other) || isHeld(other, one)) return [];
    return [
      {
        code: 'no-tab-at-corner',
        path: `${id}.${a}`,
        facts: { one: panelWords(one), other: panelWords(other) },
        says: 'No tab holds the {one} and {other} panels together where they meet.',
        remedy: 'Add a glue tab on one of these edges, unless something else holds them.',
      },
    ];
  });
}
