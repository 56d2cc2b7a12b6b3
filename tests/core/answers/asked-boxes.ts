import { ITEMS } from '../../../shared/catalogue/items';
import type { Contents, Paper, Tool } from '../../../shared/workbook';
import type { AnswersQuestion } from '../../../src/core/answers';

const STAMP = { rev: 0, createdAt: '2026-01-01T00:00:00.000Z', changedAt: '2026-01-01T00:00:00.000Z' };

const paper = (id: string, acrossMm: number, upMm: number, caliperUm: number): Paper => ({
  ...STAMP,
  id,
  name: id,
  colour: '#ffffff',
  acrossMm,
  upMm,
  grain: 'none',
  gsm: 216,
  caliperUm,
  squaringMm: { left: 0, right: 0, near: 0, far: 0 },
  packs: [{ sheets: 25, priceMinor: 1299 }],
  onHandSheets: 0,
});

/** 12 × 12 and letter in inches, A3 in millimetres: sizes as sold. */
export const PAPERS: readonly Paper[] = [
  paper('square-12', 304.8, 304.8, 300),
  paper('letter', 215.9, 279.4, 250),
  paper('a3', 297, 420, 350),
];

/** A trimmer of sixteenths, a board with a groove every eighth of an inch, a trimmer of millimetres. */
export const TOOLS: readonly Tool[] = [
  {
    ...STAMP,
    id: 'trimmer',
    name: 'trimmer',
    kind: 'fence',
    unit: 'in',
    finestMarkMm: 1.5875,
    reachMm: 304.8,
    longestCutMm: 304.8,
    stack: 1,
  },
  {
    ...STAMP,
    id: 'board',
    name: 'board',
    kind: 'grooves',
    unit: 'in',
    finestMarkMm: 1.5875,
    reachMm: 304.8,
    longestCutMm: 304.8,
    stack: 1,
    groovesMm: Array.from({ length: 95 }, (_, at) => (at + 1) * 3.175),
  },
  {
    ...STAMP,
    id: 'metric',
    name: 'metric',
    kind: 'fence',
    unit: 'mm',
    finestMarkMm: 1,
    reachMm: 430,
    longestCutMm: 430,
    stack: 1,
  },
];

const contentsOf = (id: string, count: number): Contents => {
  const item = ITEMS.find((one) => one.id === id);
  if (!item) throw new Error(`no item ${id}`);
  const { name, size, care, gramsEach } = item;
  return {
    items: [
      {
        id,
        name,
        size,
        count,
        wrapMm: 0,
        aboveRimMm: 0,
        thisWayUp: false,
        fragile: false,
        care: [...care],
        gramsEach,
      },
    ],
    clearanceMm: null,
  };
};

/** Thirty things: the catalogue's first 27, and three of them several at once. */
export const THINGS: readonly Contents[] = [
  ...ITEMS.slice(0, 27).map(({ id }) => contentsOf(id, 1)),
  contentsOf('seed-packet', 4),
  contentsOf('truffle', 4),
  contentsOf('cell-aa', 2),
];

export const ask = (contents: Contents, paperAt: number, toolAt: number): AnswersQuestion => {
  const [on, tool] = [PAPERS[paperAt % 3], TOOLS[toolAt % 3]];
  if (!on || !tool) throw new Error('three papers, three tools');
  return {
    contents,
    favors: 48,
    spares: { percent: 10, atLeast: 0 },
    paper: on,
    tool,
    unit: tool.unit,
    currency: 'USD',
  };
};
