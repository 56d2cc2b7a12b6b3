import '../src/core/rows/jitless';
import { z } from 'zod';
import { describeValue, type Refusal, readBy } from '../src/core/rows/refusals';
import { nestsDeeperThan } from '../src/core/rows/scan-json';
import { type StripInstance, stripInstance } from './strip-instances';

/**
 * Cutting problems as the literature states them: rectangles in whole units, one size of sheet, edge-to-edge cuts. Fields that only tell
 * where an instance comes from are let pass unread.
 */
const side = z.int().min(1).max(1_000_000);

const yieldInstance = z.object({
  name: z.string().max(200),
  kind: z.enum(['unconstrained-knapsack', 'constrained-knapsack', 'cutting-stock', 'bin-packing']),
  sheet: z.object({ w: side, h: side }),
  items: z
    .array(
      z.object({
        w: side,
        h: side,
        value: z.int().min(0).max(1e12).optional(),
        demand: z.int().min(0).max(1_000_000).nullable().optional(),
      }),
    )
    .min(1)
    .max(1000),
  rotation: z.boolean().optional(),
  stages: z.union([z.literal('unlimited'), z.literal(2), z.literal(3)]).optional(),
});

export type YieldInstance = z.infer<typeof yieldInstance>;

export type InstanceReading =
  | { readonly ok: true; readonly instances: readonly (YieldInstance | StripInstance)[] }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

const DEEPEST = 64; // source: the depth gate of every file here

/** A list of instances, or why not. Never throws. */
export function readInstances(text: string): InstanceReading {
  const refuse = (refusal: Refusal): InstanceReading => ({ ok: false, refusals: [refusal] });
  const expected = 'a list of cutting problems';
  if (nestsDeeperThan(DEEPEST, text))
    return refuse({ code: 'too-deep', path: '', found: `more than ${DEEPEST} levels`, expected });
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return refuse({ code: 'not-json', path: '', found: describeValue(text.slice(0, 40)), expected });
  }
  const reading = readBy(z.array(z.discriminatedUnion('kind', [yieldInstance, stripInstance])), data);
  return reading.ok ? { ok: true, instances: reading.value } : reading;
}
