import type { Chosen } from '../styles/language/types';
import { everyWay, isGiven } from '../styles/shapes/choices';
import type { PieceData } from './piece-schema';
import type { StyleData } from './schema';
import { refusalOf, type StyleRefusal } from './style-refusal';

/** How much is checked. source: our own, several times the largest style here */
const LIMITS = { ways: 64, panels: 1000 };

/** Every way of choosing is checked, so their number is bounded before anything walks them. */
export function tooManyWays({ options = {}, ways, pieces }: StyleData): StyleRefusal | null {
  const count = Object.values(options).reduce((all, { choices }) => all * choices.length, 1);
  if (count > LIMITS.ways)
    return refusalOf(
      'too-many-ways',
      'options',
      'Its options can be chosen in {count} ways.',
      { count: `${count}` },
      'Leave out an option or a choice: at most 64 ways can be checked.',
    );
  if ((pieces === undefined) === (ways === undefined))
    return refusalOf(
      'pieces-or-ways',
      'pieces',
      'A style has either pieces or ways, and this one has {found}.',
      { found: pieces === undefined ? 'neither' : 'both' },
      'Use pieces for one way of building it, ways where its options change them.',
    );
  const panels = everyPiece({ ways, pieces } as StyleData).reduce(
    (sum, [, piece]) => sum + Object.keys(piece.panels).length,
    0,
  );
  return panels <= LIMITS.panels
    ? null
    : refusalOf(
        'too-many-panels',
        'ways',
        'Its ways have {count} panels together.',
        { count: `${panels}` },
        'Leave out an option: at most 1000 panels can be checked.',
      );
}

/** Every piece of every way, with its place in the file. */
function everyPiece({ ways, pieces, whole }: StyleData): readonly (readonly [string, PieceData])[] {
  const of = (path: string, all: Readonly<Record<string, PieceData>>) =>
    Object.entries(all).map(([id, piece]) => [`${path}.${id}`, piece] as const);
  return [
    ...(pieces === undefined ? [] : of('pieces', pieces)),
    ...(ways ?? []).flatMap((way, at) => of(`ways[${at}].pieces`, way.pieces)),
    ...(whole === undefined ? [] : ([['whole', whole]] as const)),
  ];
}

/** Panels that hang on nothing, or on a panel that comes after them: no net can be laid from such a tree. */
export function treeFaults(data: StyleData): readonly StyleRefusal[] {
  return everyPiece(data).flatMap(([path, { panels }]) => {
    const names = Object.keys(panels);
    if (names.length === 0)
      return [refusalOf('no-panel', `${path}.panels`, 'A piece has no panel.', {}, 'Give it at least one.')];
    return Object.entries(panels).flatMap(([panel, { on }], at): readonly StyleRefusal[] => {
      const where = `${path}.panels.${panel}`;
      if (at === 0)
        return on === undefined
          ? []
          : [
              refusalOf(
                'first-panel-hangs',
                where,
                'The first panel, {panel}, is joined to {on}, which comes after it.',
                { panel, on },
                'Start with the panel that stays flat on the table, and leave out its “on”.',
              ),
            ];
      const parent = on?.split('.')[0] ?? '';
      if (names.indexOf(parent) >= 0 && names.indexOf(parent) < at) return [];
      return [
        on === undefined
          ? refusalOf(
              'panel-hangs-on-nothing',
              where,
              'The panel {panel} is joined to no other, so it can’t fold.',
              { panel },
              'Say which edge it is joined to, such as "on": "base.left".',
            )
          : refusalOf(
              'panel-hangs-on-later',
              where,
              'The panel {panel} is joined to {on}, and no panel before it has that name.',
              { panel, on },
              'List the panel it is joined to before it, or join it to another.',
            ),
      ];
    });
  });
}

/** A way of choosing its options for which the file has no pieces. */
export function unbuilt(
  { options }: StyleData,
  built: readonly { readonly given: readonly Chosen[] }[],
): StyleRefusal | null {
  const without = everyWay(options).find((chosen) => !built.some(({ given }) => isGiven(given, chosen)));
  return without === undefined
    ? null
    : refusalOf(
        'way-without-pieces',
        'ways',
        'No way has the pieces for {chosen}.',
        {
          chosen:
            Object.entries(without)
              .map(([option, id]) => `${option} ${id}`)
              .join(', ') || 'a style without options',
        },
        'Add a way with these choices, or use pieces in place of ways.',
      );
}
