import type { Rows } from '../../shared/tables';
import type { RollSupply } from '../../shared/workbook';

const stamp = { rev: 0, createdAt: '2026-01-10T09:00:00.000Z', changedAt: '2026-01-10T09:00:00.000Z' };

export const recipeRow = (id: string, change: Partial<Rows['recipes']> = {}): Rows['recipes'] => ({
  id,
  ...stamp,
  name: `Recipe ${id}`,
  styleId: 'open-top',
  sizesMm: { width: 88.9, depth: 38.1, height: 76.2 },
  options: { seam: 'back' },
  caliperUm: 300,
  paperId: null,
  faceUp: 'inside',
  grain: 'upright',
  dressings: [],
  notes: '',
  ...change,
});

export const paperRow = (id: string, change: Partial<Rows['papers']> = {}): Rows['papers'] => ({
  id,
  ...stamp,
  name: `Paper ${id}`,
  colour: '#aabbcc',
  acrossMm: 215.9,
  upMm: 279.4,
  grain: 'up',
  gsm: 216,
  caliperUm: 300,
  squaringMm: { left: 0, right: 0, near: 0, far: 0 },
  packs: [{ sheets: 25, priceMinor: 799 }],
  onHandSheets: 4,
  ...change,
});

export const eventRow = (id: string, change: Partial<Rows['events']> = {}): Rows['events'] => ({
  id,
  ...stamp,
  name: `Event ${id}`,
  date: '2026-06-20',
  lines: [],
  spares: { percent: 10, atLeast: 0 },
  tapeId: null,
  currency: 'USD',
  notes: '',
  ...change,
});

export const supplyRow = (id: string, change: Partial<RollSupply> = {}): RollSupply => ({
  id,
  ...stamp,
  name: `Tape ${id}`,
  kind: 'tape',
  widthMm: 6.35,
  rollMm: 20000,
  priceMinor: 499,
  onHandRolls: 1,
  ...change,
});

export const toolRow = (id: string, change: Partial<Rows['tools']> = {}): Rows['tools'] => ({
  id,
  ...stamp,
  name: `Tool ${id}`,
  kind: 'fence',
  unit: 'in',
  finestMarkMm: 1.5875,
  reachMm: 381,
  longestCutMm: 304.8,
  stack: 2,
  ...change,
});

/** The smallest picture there is: what a JPEG starts and ends with. */
export const photoRow = (id: string, change: Partial<Rows['photos']> = {}): Rows['photos'] => ({
  id,
  ...stamp,
  name: `Photo ${id}`,
  recipeId: 'a',
  widthPx: 640,
  heightPx: 480,
  jpeg: '/9j/2Q==',
  ...change,
});
