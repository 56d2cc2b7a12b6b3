import './jitless';
import { z } from 'zod';

/**
 * The part of FOLD 1.2 a flat net needs (source: the format's specification, `doc/spec.md` of the npm package `fold` 0.12.0), with our own
 * keys under `cc:`. Coordinates in the frame's unit; other keys pass unread.
 */
const index = z.int().min(0).max(20_000);
const corner = z.array(z.number().min(-1e6).max(1e6)).min(2).max(3);
const word = z.string().max(80);

/** Millimeters to each unit a file may be in. source: FOLD 1.2, `frame_unit`; an inch is 25.4 mm and 72 points by definition. */
export const FOLD_UNITS_MM = { in: 25.4, pt: 25.4 / 72, m: 1000, cm: 10, mm: 1, um: 0.001 } as const;

const closingAct = z.union([
  z.strictObject({
    do: z.enum(['fold', 'tuck']),
    hinges: z.array(index).max(500),
    toDeg: z.array(z.number()).max(500),
    through: z.array(z.array(z.number()).max(500)).max(20).optional(),
    panels: z.array(word).max(500),
    bends: z.boolean(),
    tip: z.string().max(400).nullable(),
  }),
  z.strictObject({ do: z.literal('glue'), joint: index, tip: z.string().max(400).nullable() }),
]);

const curve = z.strictObject({
  a: z.tuple([z.number(), z.number()]),
  b: z.tuple([z.number(), z.number()]),
  centre: z.tuple([z.number(), z.number()]),
  radius: z.number(),
  kind: z.enum(['score', 'cut']),
});

const foldFrame = z.looseObject({
  frame_title: z.string().max(200).optional(),
  frame_unit: z.string().optional(),
  vertices_coords: z.array(corner).min(3).max(5000),
  edges_vertices: z
    .array(z.tuple([index, index]))
    .min(3)
    .max(10_000),
  edges_assignment: z.array(z.enum(['B', 'M', 'V', 'F', 'U', 'C', 'J'])),
  edges_foldAngle: z.array(z.number().min(-180).max(180).nullable()).optional(),
  faces_vertices: z.array(z.array(index).min(3).max(1000)).max(2000).optional(),
  'faces_cc:name': z.array(word).optional(),
  'faces_cc:panel': z.array(word).optional(),
  'faces_cc:role': z.array(word).optional(),
  'faces_cc:parent': z.array(index.nullable()).optional(),
  /** Openings within each face, as rings of vertices. */
  'faces_cc:holes': z.array(z.array(z.array(index).min(3).max(1000)).max(50)).optional(),
  'edges_cc:curve': z.array(index.nullable()).optional(),
  'cc:piece': word.optional(),
  'cc:lid': z.literal(true).optional(),
  'cc:glue': z.array(z.tuple([index, index])).optional(),
  'cc:laps': z
    .array(
      z.strictObject({
        lap: z.enum(['inside', 'outside']),
        carries: z.boolean(),
        glueOnly: z.literal(true).optional(),
        gap: z.number(),
      }),
    )
    .optional(),
  'cc:seams': z.array(z.tuple([index, index])).optional(),
  'cc:seamSides': z.array(z.strictObject({ faces: z.tuple([index, index]), gap: z.number() })).optional(),
  'cc:overlaps': z.array(z.array(index)).optional(),
  'cc:closing': z.array(closingAct).max(500).optional(),
  /** Ribbon put through a panel once the piece is closed. */
  'cc:threads': z
    .array(z.strictObject({ panel: word, long: z.number().positive(), tip: z.string().max(400) }))
    .max(20)
    .optional(),
  /** Strips to pare off flaps that fold in first, from the score to the free edge. */
  'cc:pare': z
    .array(
      z.strictObject({
        face: index,
        a: z.tuple([z.number(), z.number()]),
        b: z.tuple([z.number(), z.number()]),
      }),
    )
    .max(500)
    .optional(),
  'cc:curves': z.array(curve).max(500).optional(),
  'cc:shell': z.array(index).optional(),
  'cc:roomMm3': z.number().optional(),
});

/** A FOLD file: the key frame at the top level, further frames (one a piece of card) below it. */
export const foldFile = foldFrame.extend({
  file_spec: z.number(),
  file_frames: z.array(foldFrame).max(20).optional(),
});

export type FoldFile = z.infer<typeof foldFile>;
export type FoldFrame = z.infer<typeof foldFrame>;
