import { drawDecorateMap, type PlacedOutline } from '../core/draw/net/decorate-map';
import type { PrintDocument } from './print-document';
import { printTemplate, type TemplateInput } from './template';

export interface DecorateMapInput extends Omit<TemplateInput, 'faceUp' | 'instead'> {
  /** Dressing that is stuck on, drawn as outlines. */
  readonly placed?: readonly PlacedOutline[];
}

const TEXT_MM = 4.6; // names and arrows, read at arm's length

/** The map for decorating while flat, at true size: outside up, which way is up on every panel, what must stay bare, the seam, the bleed. */
export function printDecorateMap({ placed, ...input }: DecorateMapInput): PrintDocument {
  const { ruler } = input;
  const more = placed ? { placed } : {};
  return printTemplate({
    ...input,
    faceUp: 'outside',
    instead: {
      title: 'map for decorating flat',
      draw: (piece) => drawDecorateMap(piece, { ruler, scale: 1, textMm: TEXT_MM, ...more }),
    },
  });
}
