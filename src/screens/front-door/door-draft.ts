import { useMemo, useState } from 'react';
import { type CatalogueSheet, estimateCaliperUm, sheetById } from '../../../shared/catalogue';
import { type CatalogueItem, ITEMS } from '../../../shared/catalogue/items';
import { type HeardPaper, readPaper } from '../../../shared/read-paper';
import type { Paper, Tool } from '../../../shared/workbook';
import type { Contents, ItemShape } from '../../core/rows/contents';
import { mmOfTicks } from '../../core/rows/lengths';
import { type LengthUnit, readSizes, type Ticks } from '../../core/units';
import type { Content } from '../../state/intents/first-rows';

export const MEASURED = 'measured';
export const TYPED = 'typed';
export const NO_TOOL = 'none';

/** What they typed, as they typed it. */
export interface DoorDraft {
  readonly item: string;
  readonly size: string;
  readonly each: number;
  readonly favors: number;
  /** Null: the first of their own, or typed. */
  readonly paper: string | null;
  readonly paperText: string;
  readonly tool: string | null;
}

const FIRST: DoorDraft = {
  item: MEASURED,
  size: '',
  each: 1,
  favors: 24,
  paper: null,
  paperText: '',
  tool: null,
};

/** Stays as long as the tab, so that the way back finds the answers as they were left. */
let kept: DoorDraft = FIRST;

export function useDoorDraft() {
  const [draft, setDraft] = useState(kept);
  const put = (change: Partial<DoorDraft>) => {
    kept = { ...kept, ...change };
    setDraft(kept);
  };
  return { draft, put };
}

const BARE = { wrapMm: 0, aboveRimMm: 0, thisWayUp: false, fragile: false } as const;

/** What goes in, from the list or measured; null while it does not read. */
export function contentsOf({ item, size, each }: DoorDraft, unit: LengthUnit, name: string): Contents | null {
  const listed = ITEMS.find(({ id }) => id === item);
  const shape = listed?.size ?? shapeOf(size, unit);
  if (!shape) return null;
  const { gramsEach = null, care = [] } = listed ?? ({} as Partial<CatalogueItem>);
  return {
    items: [
      {
        ...BARE,
        id: 'thing-1',
        name: listed?.name ?? name,
        size: shape,
        count: each,
        care: [...care],
        gramsEach,
      },
    ],
    clearanceMm: null,
  };
}

/** Three lengths are a box, two something round and tall, one a ball. */
function shapeOf(text: string, unit: LengthUnit): ItemShape | null {
  const sizes = readSizes(text, unit);
  const [a, b, c] = (sizes ?? []).map((length: Ticks) => mmOfTicks(length));
  if (sizes === null || a === undefined || sizes.length > 3) return null;
  if (b === undefined) return { shape: 'sphere', diameterMm: a };
  if (c === undefined) return { shape: 'cylinder', diameterMm: a, heightMm: b, lies: 'either' };
  return { shape: 'cuboid', widthMm: a, depthMm: b, heightMm: c };
}

/** Cardstock that any shop sells: a sheet of the catalogue, 80 lb cover or 250 g/m². source: common practice, no source */
const SOLD: Readonly<Record<LengthUnit, readonly (readonly [sheet: string, gsm: number])[]>> = {
  in: [
    ['square-12', 216],
    ['letter', 216],
  ],
  mm: [
    ['a4', 250],
    ['a3', 250],
  ],
};
const NO_SQUARING = { left: 0, right: 0, near: 0, far: 0 };

/** A paper of no row yet. */
const newPaper = (heard: HeardPaper['paper']): Content<'papers'> => ({
  ...heard,
  grain: 'none',
  squaringMm: NO_SQUARING,
  onHandSheets: 0,
});

export interface SoldPaper {
  readonly sheet: CatalogueSheet;
  readonly gsm: number;
}

/** Papers of any shop that they have not got. */
export const soldPapers = (unit: LengthUnit): readonly SoldPaper[] =>
  SOLD[unit].flatMap(([id, gsm]) => {
    const sheet = sheetById(id);
    return sheet ? [{ sheet, gsm }] : [];
  });

/** Bulk of uncoated cardstock, cm³/g. source: common practice, no source */
const BULK = 1.25;

/** The paper of the draft: one on the shelf, or one to be made, which `nameOf` names. */
export function paperOf(
  { paper, paperText }: DoorDraft,
  own: readonly Paper[],
  unit: LengthUnit,
  nameOf: (sold: SoldPaper) => string,
): Paper | Content<'papers'> | null {
  const chosen = paper ?? own[0]?.id ?? TYPED;
  const row = own.find(({ id }) => id === chosen);
  if (row) return row;
  const sold = soldPapers(unit).find(({ sheet }) => sheet.id === chosen);
  if (sold)
    return newPaper({
      name: nameOf(sold),
      colour: '#f4efe4',
      acrossMm: mmOfTicks(sold.sheet.across),
      upMm: mmOfTicks(sold.sheet.up),
      gsm: sold.gsm,
      caliperUm: estimateCaliperUm(sold.gsm, BULK),
      packs: [],
    });
  const heard = readPaper(paperText, unit);
  return heard && newPaper(heard.paper);
}

const trimmer = { kind: 'fence', stack: 1 } as const;
const INCHES = { unit: 'in', finestMarkMm: 1.5875, reachMm: 304.8, longestCutMm: 304.8 } as const;

/** Tools in neutral words. source: common practice, no source */
export const PRESETS: Readonly<Record<'trimmer' | 'board' | 'metric', Omit<Content<'tools'>, 'name'>>> = {
  trimmer: { ...trimmer, ...INCHES },
  board: {
    ...INCHES,
    kind: 'grooves',
    stack: 1,
    groovesMm: Array.from({ length: 95 }, (_, at) => (at + 1) * 3.175),
  },
  metric: { ...trimmer, unit: 'mm', finestMarkMm: 1, reachMm: 300, longestCutMm: 300 },
};

const isPreset = (id: string): id is keyof typeof PRESETS => id in PRESETS;

/** The tool of the draft: one on the shelf, one to be made, or none. */
export function toolOf(
  { tool }: DoorDraft,
  own: readonly Tool[],
  unit: LengthUnit,
  names: Readonly<Record<keyof typeof PRESETS, string>>,
): Tool | Content<'tools'> | null {
  const chosen = toolIdOf(tool, own, unit);
  const row = own.find(({ id }) => id === chosen);
  if (row) return row;
  return isPreset(chosen) ? { ...PRESETS[chosen], name: names[chosen] } : null;
}

export const toolIdOf = (chosen: string | null, own: readonly Tool[], unit: LengthUnit): string =>
  chosen ?? own.find((tool) => tool.unit === unit)?.id ?? (unit === 'in' ? 'trimmer' : 'metric');

/** The same object as long as it says the same. */
export function useSteady<Value>(value: Value): Value {
  const text = JSON.stringify(value);
  return useMemo(() => JSON.parse(text) as Value, [text]);
}
