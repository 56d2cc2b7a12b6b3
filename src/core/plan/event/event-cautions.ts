import { asItStands } from '../../net/lay-net';
import type { Supply } from '../../rows';
import { type Caution, cautionsAbout, type Hazard, hazardsInside, hazardsNamed } from '../../rows/cautions';
import { inches } from '../../units';
import type { CuttingTool } from '../../yield/types';
import type { EventBox } from './event-boxes';
import type { EventPart } from './types';

/** Narrowest strip that keeps fingers clear of a trimmer’s blade. source: common practice, no source */
const NARROWEST_STRIP = inches(0, 1, 2);

/** Where an event's work or gifts can hurt, in the usual words. What is given is not known to be harmless, so all that may apply is said. */
export function cautionsOfEvent(
  boxes: readonly EventBox[],
  parts: readonly EventPart[],
  tool: CuttingTool,
  supplies: readonly Supply[],
): readonly Caution[] {
  const counted = new Set(
    boxes.flatMap(({ dressing }) => (dressing?.counted ?? []).map(({ supplyId }) => supplyId)),
  );
  const gifts = supplies.filter(({ id, kind }) => kind === 'contents' && counted.has(id));
  const hazards: Hazard[] = [];
  if (tool.stack > 1) hazards.push('stack');
  if (parts.some(({ across, up }) => Math.min(across, up) < NARROWEST_STRIP)) hazards.push('narrow-strip');
  if (boxes.some(({ net }) => asItStands(net).some(({ joints }) => joints.some(({ carries }) => carries))))
    hazards.push('load');
  if (gifts.length > 0) hazards.push('food', 'allergens', 'small-parts');
  hazards.push(...gifts.flatMap(({ name }) => hazardsNamed(name)));
  hazards.push(...boxes.flatMap(({ recipe }) => (recipe.contents ? hazardsInside(recipe.contents) : [])));
  return cautionsAbout(hazards);
}
