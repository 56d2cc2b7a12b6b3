import type { Len } from '../../styles/language/types';
import { TAB_QUANTITIES, TUBE_QUANTITIES, TUBE_SYMBOLS } from '../../styles/shapes/glued-tube';
import { allowanceOf } from '../../styles/shapes/size-symbols';
import { type Draft, type PanelDraft, type PieceDraft, withPiece } from '../draft';
import { formulaOf, namesIn, shareOf } from '../forms';
import { withLimit, withQuantity, withSymbol } from '../lengths';
import { across, axisOf, hangsOn, isRectangle, isSide, otherAxis, rowOf, type Side } from '../sides';
import { type Build, extent, on, type Part, pieceAt, type Spot, sized } from './spot';

/** A corner tab of a tray, or the tab that closes a row of walls to a tube. */
export const glueTab: Build = (draft, spot) => {
  const piece = pieceAt(draft, spot);
  const parent = piece.panels[spot.parent];
  const hinge = hangsOn(parent);
  const isCorner = hinge !== null && isSide(hinge.edge) && axisOf(hinge.edge) !== axisOf(spot.side);
  if (isCorner) return cornerTab(draft, spot, hinge.parent);
  const row = rowOf(piece, spot.parent);
  const closes = axisOf(spot.side) === 0 && row.length > 2 && parent?.role === 'wall';
  return closes ? seamTab(draft, spot, row) : edgeTab(draft, spot);
};

/** source: tray and hinged lid, our own styles */
function cornerTab(draft: Draft, spot: Spot, floor: string): Part {
  const facing = extent(pieceAt(draft, spot).panels[floor], otherAxis(axisOf(spot.side))) ?? spot.hinge;
  const own = extent(pieceAt(draft, spot).panels[spot.parent], otherAxis(axisOf(spot.side))) ?? spot.hinge;
  const [relieved, relief] = withSymbol(
    draft,
    'relief',
    allowanceOf(
      'Tab relief',
      'How much each corner tab is kept short so that it does not show.',
      '1/16 in',
      '0 in',
      '1/4 in',
    ),
  );
  const [made, tab] = withQuantity(relieved, 'tab', {
    means: 'corner tab: short of the rim, and of half the wall it is glued to',
    formula: `min(${formulaOf(own)}, (${formulaOf(facing)}) / 2) - ${relief}`,
  });
  return [
    withLimit(made, {
      code: 'relief-eats-tab',
      symbol: relief,
      atMost: `${own} - 1/4 in`,
      says: 'Relief {size} leaves too little of the corner tabs to glue.',
    }),
    { role: 'glueTab', on: on(spot), size: sized(spot.side, spot.hinge, tab), fold: 90 },
  ];
}

/** The panel at the other end of the row narrows by nothing; the one the tab hangs on does, in thick card. source: the glued tube of our own styles */
function seamTab(draft: Draft, spot: Spot, row: readonly string[]): Part {
  const [sizedDraft, tab] = withSymbol(draft, 'tab', TUBE_SYMBOLS.tab);
  const [clear, tabClear] = withQuantity(sizedDraft, 'tabClear', said(TAB_QUANTITIES.tabClear));
  const [sloped, bevel] = withQuantity(clear, 'tabBevel', {
    ...said(TAB_QUANTITIES.tabBevel),
    formula: TAB_QUANTITIES.tabBevel.formula.replace('tab', tab),
  });
  const [relieved, relief] = withQuantity(sloped, 'seamRelief', said(TUBE_QUANTITIES.seamRelief));
  const narrowed = withPiece(relieved, spot.piece, (piece) => narrow(piece, spot.parent, relief));
  const target = extent(
    pieceAt(draft, spot).panels[row[spot.side === 'right' ? 0 : row.length - 1] ?? ''],
    0,
  );
  const steep = withLimit(narrowed, {
    code: 'tab-wider-than-high',
    symbol: tab,
    atMost: shareOf(spot.hinge, [7, 8]),
    says: 'The ends of a glue tab {size} wide slope so far in that little is left to glue.',
  });
  const limited = withLimit(steep, {
    code: 'tab-wider-than-its-wall',
    symbol: tab,
    atMost: `${target ?? spot.hinge} - ${relief} - 1/16 in`,
    says: 'The glue tab {size} is too wide for the panel it is glued to.',
  });
  return [
    limited,
    {
      role: 'glueTab',
      on: on(spot),
      fold: 90,
      taper: [bevel, bevel],
      ...clearOf(pieceAt(limited, spot), { ...spot, row, tab, tabClear }),
    },
  ];
}

const said = ({ means, formula, onMark }: { means: string; formula: string; onMark?: true }) => ({
  means,
  formula,
  ...(onMark ? { onMark } : {}),
});

/** A wall and the flaps on it narrowed by this much. */
function narrow(piece: PieceDraft, wall: string, by: string): PieceDraft {
  const was = extent(piece.panels[wall], 0);
  if (was === null || namesIn(was).has(by)) return piece;
  const narrowed = (name: string, panel: PanelDraft): PanelDraft =>
    isRectangle(panel) &&
    panel.size[0] === was &&
    (name === wall || panel.on === `${wall}.down` || panel.on === `${wall}.up`)
      ? { ...panel, size: [`${was} - ${by}`, panel.size[1]] }
      : panel;
  return {
    ...piece,
    panels: Object.fromEntries(
      Object.entries(piece.panels).map(([name, panel]) => [name, narrowed(name, panel)]),
    ),
  };
}

interface SeamTab {
  readonly side: Side;
  readonly hinge: Len;
  readonly row: readonly string[];
  readonly tab: string;
  readonly tabClear: string;
}

/** How a seam tab is kept clear of the flaps that fold in past its ends. */
function clearOf(
  piece: PieceDraft,
  { side, hinge, row, tab, tabClear }: SeamTab,
): { readonly size: [Len, Len]; readonly at?: Len } {
  const folds = (end: Side) => row.some((wall) => across(piece, wall, end) !== undefined);
  const [foot, head] = [folds('down'), folds('up')];
  const first = side === 'right' ? foot : head;
  return {
    size: [tab, `${hinge}${foot ? ` - ${tabClear}` : ''}${head ? ` - ${tabClear}` : ''}`],
    ...(first ? { at: tabClear } : {}),
  };
}

/** Seam tabs kept clear of flaps that have come or gone since; a tab that the maker has sized stays. */
export function withTabsClear(draft: Draft, piece: string): Draft {
  const names = Object.keys(draft.quantities ?? {});
  const tabClear = names.find(
    (name) => draft.quantities?.[name]?.formula === TAB_QUANTITIES.tabClear.formula,
  );
  if (tabClear === undefined) return draft;
  return withPiece(draft, piece, (of) => ({
    ...of,
    panels: Object.fromEntries(
      Object.entries(of.panels).map(([name, panel]): [string, PanelDraft] => {
        const hinge = hangsOn(panel);
        if (panel.role !== 'glueTab' || !isRectangle(panel) || !hinge || !isSide(hinge.edge))
          return [name, panel];
        const long = extent(of.panels[hinge.parent], 1);
        const ours = [0, 1, 2].map((ends) => `${long}${` - ${tabClear}`.repeat(ends)}`);
        if (long === null || panel.taper === undefined || !ours.includes(panel.size[1])) return [name, panel];
        const { at: _, ...rest } = panel;
        const seam = {
          side: hinge.edge,
          hinge: long,
          row: rowOf(of, hinge.parent),
          tab: panel.size[0],
          tabClear,
        };
        return [name, { ...rest, ...clearOf(of, seam) }];
      }),
    ),
  }));
}

/** Any other strip to glue: its own width, its ends sloped. */
function edgeTab(draft: Draft, spot: Spot): Part {
  const [made, tab] = withSymbol(draft, 'edgeTab', {
    ...TUBE_SYMBOLS.tab,
    label: 'Edge tab',
    default: '1/2 in',
  });
  return [
    withLimit(made, {
      code: 'tab-comes-to-a-point',
      symbol: tab,
      atMost: shareOf(spot.hinge, [7, 8]),
      says: 'The ends of a glue tab {size} wide slope so far in that little is left to glue.',
    }),
    {
      role: 'glueTab',
      on: on(spot),
      size: sized(spot.side, spot.hinge, tab),
      fold: 90,
      taper: shareOf(tab, [1, 4]),
    },
  ];
}
