import '../src/core/rows/jitless';
import { z } from 'zod';
import { contents } from '../src/core/rows/contents';
import { named } from '../src/core/rows/fields';
import { lengthMm, marginMm } from '../src/core/rows/lengths';
import { type Refusal, readBy } from '../src/core/rows/refusals';
import { moveToNewest } from './migrations';
import { passGates } from './read-workbook';
import { FORMAT, SCHEMA } from './workbook';

/** A question for the fit: what goes inside, the tool and sheet at hand, and what is already settled. The same format as a workbook, of kind `contents`. */
const contentsFile = z.strictObject({
  format: z.literal(FORMAT),
  schema: z.literal(SCHEMA),
  kind: z.literal('contents'),
  contents,
  caliperUm: z.int().min(50).max(2000),
  tool: z.strictObject({ unit: z.enum(['in', 'mm']), finestMarkMm: lengthMm, reachMm: lengthMm }),
  sheet: z.strictObject({ acrossMm: lengthMm, upMm: lengthMm }),
  /** How much larger than needed a size may become. */
  slackMm: marginMm,
  /** Styles to try; none named tries all. */
  styles: z.array(z.string().max(64)).max(100),
  /** Sizes that must stay as they are, by symbol. */
  heldMm: named(lengthMm),
});

export type ContentsFile = z.infer<typeof contentsFile>;

/** A contents file, or why not; the same gates as a workbook. Never throws. */
export function readContents(original: string): ContentsFile | readonly Refusal[] {
  const gates = passGates(original);
  if (!gates.ok) return gates.refusals;
  const moved = moveToNewest(gates.data, gates.schema);
  const reading = readBy(contentsFile, moved);
  return reading.ok ? reading.value : reading.refusals;
}
