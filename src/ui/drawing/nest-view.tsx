import { useCallback } from 'react';
import { drawNest } from '../../core/draw/sheet/nest-drawing';
import type { PieceNet } from '../../core/net';
import type { Nest, SheetPaper } from '../../core/yield';
import { useRuler } from '../fields/measure';
import { DrawingView, type Space } from './drawing-view';

interface NestViewProps {
  readonly nest: Nest;
  readonly paper: SheetPaper;
  readonly piece: PieceNet;
  readonly stale: boolean;
}

const LETTER_MM = 4.5;

/** One sheet with real outlines laid into one another. */
export function NestView({ nest, paper, piece, stale }: NestViewProps) {
  const ruler = useRuler();
  const draw = useCallback(
    (space: Space) => drawNest(nest, paper, space, { piece, ruler, textMm: LETTER_MM }),
    [nest, paper, piece, ruler],
  );
  return <DrawingView draw={draw} stale={stale} />;
}
