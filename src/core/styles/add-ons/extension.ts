import { TICKS_PER_MM } from '../../units/ticks';
import { formOf } from '../language/linear-form';
import type {
  AddOnPlace,
  Chosen,
  ConstraintSpec,
  CutSpec,
  HoleSpec,
  Len,
  NotchSpec,
  OptionSpec,
  PanelSpec,
  PieceSpec,
  Pieces,
  Quantity,
  SymbolSpec,
  Values,
} from '../language/types';

/** What one add-on brings to a style. */
export interface Extension {
  readonly options: Readonly<Record<string, OptionSpec>>;
  readonly symbols: Readonly<Record<string, SymbolSpec>>;
  readonly quantities: Readonly<Record<string, Quantity>>;
  readonly constraints: readonly ConstraintSpec[];
  /** The pieces with it, chosen as they are. */
  readonly extend: (pieces: Pieces, chosen: Chosen) => Pieces;
}

/** The style's own pieces, before anything is added. */
export type PlainPieces = (chosen: Chosen) => Pieces;

export type RectangleSpec = Extract<PanelSpec, { readonly size: unknown }>;

/** Card left round an opening, a quarter inch. source: our choice */
export const LEFT_ROUND_MM = 6.35;

/** The choice to go without. */
const NONE = 'none';

/** An option that offers these places, and to go without. */
export const placesOption = (
  label: string,
  help: string,
  without: string,
  places: readonly AddOnPlace[],
): OptionSpec => {
  const first = places.find(({ forNew }) => forNew);
  return {
    label,
    help,
    choices: [{ id: NONE, label: without }, ...places.map(({ id, label }) => ({ id, label }))],
    ...(first ? { forNew: first.id } : {}),
    addOn: true,
  };
};

/** The ways of choosing in which an add-on is there. */
export const given = (option: string, places: readonly AddOnPlace[]): readonly Chosen[] =>
  places.map(({ id }) => ({ [option]: id }));

export const chosenPlace = (
  option: string,
  places: readonly AddOnPlace[],
  chosen: Chosen,
): AddOnPlace | undefined => places.find(({ id }) => id === chosen[option]);

/** A linear form's value in millimeters, before any rounding. */
export function inMm(text: Len, values: Values): number {
  const { terms, constant, over } = formOf(text);
  return (
    terms.reduce((sum, { name, times }) => sum + times * (values[name] ?? 0), constant / TICKS_PER_MM) / over
  );
}

/** The rectangles of a place; a panel of another shape is an author's slip. */
export function rectanglesAt(
  pieces: Pieces,
  { piece, at }: AddOnPlace,
): readonly (readonly [string, RectangleSpec])[] {
  return at.map((where) => {
    const name = where.split('.')[0] ?? where;
    const panel = pieces[piece]?.panels[name];
    if (panel === undefined || !('size' in panel))
      throw new RangeError(`no rectangle ${name} in ${piece} to add to`);
    return [name, panel] as const;
  });
}

/** Changes every panel of the chosen place. */
export const changeAt =
  (
    option: string,
    places: readonly AddOnPlace[],
    change: (panel: PanelSpec, edge: string) => PanelSpec,
  ): Extension['extend'] =>
  (pieces, chosen) => {
    const place = chosenPlace(option, places, chosen);
    if (place === undefined) return pieces;
    const panels = { ...pieces[place.piece]?.panels };
    for (const where of place.at) {
      const [name = where, edge = ''] = where.split('.');
      const panel = panels[name];
      if (panel === undefined) throw new RangeError(`no panel ${name} in ${place.piece} to add to`);
      panels[name] = change(panel, edge);
    }
    return withPiece(pieces, place.piece, () => ({ panels }));
  };

/** A panel with something more in one of its lists: holes, notches or cuts. A shape that has no such list is told when the style is first laid. */
export const withMore = (
  panel: PanelSpec,
  key: 'holes' | 'notches' | 'cuts',
  ...more: readonly (HoleSpec | NotchSpec | CutSpec)[]
): PanelSpec => {
  const known = (panel as { readonly [list in typeof key]?: readonly unknown[] })[key] ?? [];
  return { ...panel, [key]: [...known, ...more] };
};

/** Cuts this hole out of every panel of the chosen place. */
export const cutHole = (option: string, places: readonly AddOnPlace[], hole: HoleSpec): Extension['extend'] =>
  changeAt(option, places, (panel) => withMore(panel, 'holes', hole));

const edgeOf = (where = ''): string => where.split('.')[1] ?? '';

export const withPiece = (
  pieces: Pieces,
  id: string,
  change: (piece: PieceSpec) => Partial<PieceSpec>,
): Pieces => {
  const piece = pieces[id];
  return piece === undefined ? pieces : { ...pieces, [id]: { ...piece, ...change(piece) } };
};

/** The least of a length over the rectangles of the chosen place, mm; 0 without the add-on. */
export const leastAt =
  (
    option: string,
    places: readonly AddOnPlace[],
    plain: PlainPieces,
    what: (
      panel: RectangleSpec,
      values: Values,
      where: { readonly edge: string; readonly glued: number },
    ) => number,
  ): Quantity['of'] =>
  (values, chosen) => {
    const place = chosenPlace(option, places, chosen);
    if (place === undefined) return 0;
    const pieces = plain(chosen);
    const piece = pieces[place.piece];
    if (piece === undefined) return 0;
    const panels = place.at.map((where) => where.split('.')[0] ?? where);
    return Math.min(
      ...rectanglesAt(pieces, place).map(([name, panel], at) =>
        what(panel, values, {
          edge: edgeOf(place.at[at]),
          glued: gluedBehind(piece, name, values, panels),
        }),
      ),
    );
  };

type Tab = Extract<PanelSpec, { readonly size: unknown } | { readonly outline: unknown }>;

/** The tabs glued onto a panel. */
export const tabsBehind = (
  piece: PieceSpec | undefined,
  panel: string,
  open: readonly string[] = [],
): readonly Tab[] =>
  (piece?.joints ?? []).flatMap((joint) => {
    const isBehind = joint.onto === panel && !open.includes(joint.panel);
    const tab = isBehind ? piece?.panels[joint.panel] : undefined;
    return tab !== undefined && ('size' in tab || 'outline' in tab) ? [tab] : [];
  });

/** How far the tabs glued onto a panel reach over it from its edge, mm: they hang beside it, so as far as they stand out from their own score. */
export const gluedBehind = (
  piece: PieceSpec,
  panel: string,
  values: Values,
  /** Panels that get the same opening hide nothing of it. */
  open: readonly string[] = [],
): number =>
  Math.max(
    0,
    ...tabsBehind(piece, panel, open).map((tab) =>
      'outline' in tab
        ? Math.max(...tab.outline.map(([, out]) => inMm(out, values)))
        : inMm(tab.size[tab.on?.endsWith('.left') || tab.on?.endsWith('.right') ? 0 : 1], values),
    ),
  );
