import { useCallback } from 'react';
import { drawLayoutToFit, type NamedPart } from '../../core/draw/sheet/sheet-drawing';
import type { Layout, SheetPaper } from '../../core/yield/types';
import { useRuler } from '../fields/measure';
import { DrawingView, type Space } from './drawing-view';

interface SheetViewProps {
  readonly layout: Layout;
  readonly paper: SheetPaper;
  readonly parts: readonly NamedPart[];
  readonly lit?: readonly string[];
}

/** Letters on the parts, in millimeters at arm's length: 17 px. */
const LETTER_MM = 4.5;

/** One sheet and how it is cut: lettered parts, offcuts, numbered cuts. */
export function SheetView({ layout, paper, parts, lit }: SheetViewProps) {
  const ruler = useRuler();
  const draw = useCallback(
    (space: Space) => drawLayoutToFit(layout, paper, space, { parts, ruler, textMm: LETTER_MM }),
    [layout, paper, parts, ruler],
  );
  return <DrawingView draw={draw} {...(lit === undefined ? {} : { lit })} />;
}
