import type { WorkbookFile } from '../../shared/workbook';

const row = { rev: 1, createdAt: '2026-01-05T10:00:00Z', changedAt: '2026-01-05T10:00:00Z' };

/** Forty open-top boxes with a liner from letter sheets: the trade's everyday case, sizes in millimetres of 3 1/2 × 1 1/2 × 3 in. */
export const fortyFavors: WorkbookFile = {
  format: 'crease-and-count',
  schema: 3,
  kind: 'event',
  recipes: [
    {
      ...row,
      id: 'sweets',
      name: 'Sweets',
      styleId: 'open-top',
      sizesMm: { width: 88.9, depth: 38.1, height: 76.2, flap: 38.1 },
      options: {},
      caliperUm: 300,
      paperId: 'kraft',
      faceUp: 'outside',
      grain: 'free',
      dressings: [
        {
          id: 'lined',
          name: 'With liner',
          pieces: [
            {
              id: 'liner',
              kind: 'liner',
              name: 'Liner',
              widthMm: 88.9,
              heightMm: 152.4,
              perBox: 1,
              grain: 'free',
              paperId: null,
            },
          ],
        },
      ],
      notes: '',
    },
  ],
  events: [
    {
      ...row,
      id: 'party',
      name: 'Party',
      date: '2026-06-06',
      lines: [{ id: 'line', recipeId: 'sweets', dressingId: 'lined', paperId: null, count: 40 }],
      spares: { percent: 10, atLeast: 0 },
      tapeId: 'tape',
      currency: 'EUR',
      notes: '',
    },
  ],
  papers: [
    {
      ...row,
      id: 'kraft',
      name: 'Kraft',
      colour: '#c8a06e',
      acrossMm: 215.9,
      upMm: 279.4,
      grain: 'none',
      gsm: 216,
      caliperUm: 300,
      squaringMm: { left: 0, right: 0, near: 0, far: 0 },
      packs: [{ sheets: 25, priceMinor: 899 }],
      onHandSheets: 6,
    },
  ],
  supplies: [
    {
      ...row,
      id: 'tape',
      name: 'Tape',
      kind: 'tape',
      widthMm: 6,
      rollMm: 10_000,
      priceMinor: 349,
      onHandRolls: 0,
    },
  ],
  tools: [
    {
      ...row,
      id: 'trimmer',
      name: 'Trimmer',
      kind: 'fence',
      unit: 'in',
      finestMarkMm: 1.5875,
      reachMm: 304.8,
      longestCutMm: 304.8,
      stack: 1,
    },
  ],
  photos: [],
};
