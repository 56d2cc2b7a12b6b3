import '../src/core/rows/jitless';
import { z } from 'zod';

const corner = z.tuple([z.number().min(-1e5).max(1e5), z.number().min(-1e5).max(1e5)]);

/** Outlines to be laid on the shortest strip of a given height. Turns are whole degrees; those that are no quarter turns are left out. */
export const stripInstance = z.object({
  name: z.string().max(200),
  kind: z.enum(['irregular-strip-packing', 'irregular-strip']),
  strip: z.object({ h: z.number().positive().max(1e5) }),
  items: z
    .array(
      z.object({
        demand: z.int().min(0).max(1000).optional(),
        allowedOrientations: z.array(z.number()).max(360).optional(),
        /** Corners in order; the first may stand again at the end. */
        polygon: z.array(corner).min(3).max(500),
      }),
    )
    .min(1)
    .max(200),
});

export type StripInstance = z.infer<typeof stripInstance>;
