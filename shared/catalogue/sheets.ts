import { inches, millimetres, type Ticks } from '../../src/core/units/ticks';

export interface CatalogueSheet {
  readonly id: string;
  readonly name: string;
  readonly family:
    | 'ISO A'
    | 'ISO B'
    | 'ISO RA'
    | 'ISO SRA'
    | 'North American'
    | 'craft'
    | 'press'
    | 'mill'
    | 'card blank';
  /** The short side lies across. */
  readonly across: Ticks;
  readonly up: Ticks;
  readonly source: string;
}

type IsoSeries = 'A' | 'B' | 'RA' | 'SRA';
type Sides = readonly [short: number, long: number];

// biome-ignore format: a table
const ISO_MM: Readonly<Record<IsoSeries, readonly Sides[]>> = {
  A: [[841, 1189], [594, 841], [420, 594], [297, 420], [210, 297], [148, 210], [105, 148], [74, 105], [52, 74]],
  B: [[1000, 1414], [707, 1000], [500, 707], [353, 500], [250, 353], [176, 250], [125, 176], [88, 125], [62, 88]],
  RA: [[860, 1220], [610, 860], [430, 610], [305, 430], [215, 305]],
  SRA: [[900, 1280], [640, 900], [450, 640], [320, 450], [225, 320]],
};

const isoSheets = (series: IsoSeries): CatalogueSheet[] =>
  ISO_MM[series].map(([short, long], n) => ({
    id: `${series.toLowerCase()}${n}`,
    name: `${series}${n}`,
    family: `ISO ${series}`,
    across: millimetres(short),
    up: millimetres(long),
    source: series === 'A' || series === 'B' ? 'ISO 216' : 'ISO 217',
  }));

const MEMORY = 'from memory; ASME Y14.1 has the sheet';
const PRACTICE = 'common practice, no source';
const BASIS = 'basis size of a published basis-weight table';

type InchRow = readonly [
  id: string,
  name: string,
  family: CatalogueSheet['family'],
  across: number,
  up: number,
  source: string,
];

// biome-ignore format: a table; inches
const INCH_ROWS: readonly InchRow[] = [
  ['letter', 'Letter 8 1/2 × 11', 'North American', 8.5, 11, MEMORY],
  ['legal', 'Legal 8 1/2 × 14', 'North American', 8.5, 14, 'from memory'],
  ['half-letter', 'Half letter 5 1/2 × 8 1/2', 'North American', 5.5, 8.5, 'from memory'],
  ['tabloid', 'Tabloid 11 × 17', 'North American', 11, 17, MEMORY],
  ['ansi-c', 'ANSI C 17 × 22', 'North American', 17, 22, MEMORY],
  ['ansi-d', 'ANSI D 22 × 34', 'North American', 22, 34, MEMORY],
  ['ansi-e', 'ANSI E 34 × 44', 'North American', 34, 44, MEMORY],
  ['square-12', 'Square 12 × 12', 'craft', 12, 12, PRACTICE],
  ['square-8', 'Square 8 × 8', 'craft', 8, 8, PRACTICE],
  ['square-6', 'Square 6 × 6', 'craft', 6, 6, PRACTICE],
  ['press-12x18', 'Press 12 × 18', 'press', 12, 18, PRACTICE],
  ['press-13x19', 'Press 13 × 19', 'press', 13, 19, PRACTICE],
  ['mill-20x26', 'Cover 20 × 26', 'mill', 20, 26, BASIS],
  ['mill-22x28', 'Bristol 22 1/2 × 28 1/2', 'mill', 22.5, 28.5, BASIS],
  ['mill-25x30', 'Index 25 1/2 × 30 1/2', 'mill', 25.5, 30.5, BASIS],
  ['mill-25x38', 'Text 25 × 38', 'mill', 25, 38, BASIS],
  ['mill-24x36', 'Tag 24 × 36', 'mill', 24, 36, BASIS],
  ['poster-22x28', 'Poster board 22 × 28', 'craft', 22, 28, 'from memory'],
  ['mill-23x35', 'Mill 23 × 35', 'mill', 23, 35, PRACTICE],
  ['mill-26x40', 'Mill 26 × 40', 'mill', 26, 40, PRACTICE],
  ['blank-a2', 'Card blank 4 1/4 × 5 1/2', 'card blank', 4.25, 5.5, PRACTICE],
  ['blank-a7', 'Card blank 5 × 7', 'card blank', 5, 7, PRACTICE],
  ['blank-4x6', 'Card blank 4 × 6', 'card blank', 4, 6, PRACTICE],
];

/** Sheets of cardboard as sold by the meter rule, in centimeters. */
const CENTIMETRE_ROWS: readonly Sides[] = [
  [50, 70],
  [70, 100],
];

/** Every sheet size offered when a paper is added. The true sheet may differ: craft squares run up to 1/16 in over (common practice). */
export const SHEETS: readonly CatalogueSheet[] = [
  ...INCH_ROWS.map(([id, name, family, across, up, source]) => ({
    id,
    name,
    family,
    across: inches(across),
    up: inches(up),
    source,
  })),
  ...CENTIMETRE_ROWS.map(([across, up]) => ({
    id: `board-${across}x${up}`,
    name: `Board ${across} × ${up} cm`,
    family: 'mill' as const,
    across: millimetres(across * 10),
    up: millimetres(up * 10),
    source: 'from memory',
  })),
  ...(['A', 'B', 'RA', 'SRA'] as const).flatMap(isoSheets),
];

export const sheetById = (id: string): CatalogueSheet | undefined => SHEETS.find((sheet) => sheet.id === id);
