import { useCallback, useDeferredValue } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { drawNetToFit } from '../../core/draw/net/net-drawing';
import type { BoxNet, PieceNet } from '../../core/net';
import { DrawingView, type Space } from '../../ui/drawing/drawing-view';
import { type Lit, litKeys, litMark } from '../../ui/drawing/lit';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { useRuler } from '../../ui/fields/measure';
import { usePageWords } from '../../ui/words';

/** Biggest numbers of a net on screen, in millimeters at arm's length: 17 px. */
const NUMBER_MM = 4.5;
/** Up to here a drawing has no room for the other unit; the table and the fields have it. */
const NARROW_MM = 120;

/** Of the size the net could have, its numbers leave it this share at least; those they give up stand in the table. */
const LEAST_SHARE = 0.5;

/** Upright scores run along the grain where it runs up the net. */
const GRAIN = { upright: 'up', around: 'across', free: null } as const;

interface Drawn {
  readonly piece: PieceNet;
  readonly recipe: Pick<Recipe, 'faceUp' | 'grain'>;
}

/** How this piece is drawn into a space: the face that lies up, its grain, running numbers on the maker's marks. */
function useNetDrawing({ piece, recipe }: Drawn) {
  const ruler = useRuler();
  const { faceUp } = recipe;
  const grain = GRAIN[recipe.grain];
  return useCallback(
    (space: Space) =>
      drawNetToFit(piece, space, {
        ruler,
        textMm: NUMBER_MM,
        faceUp,
        grain,
        least: LEAST_SHARE,
        show: { otherUnit: space.widthMm > NARROW_MM },
      }),
    [piece, ruler, faceUp, grain],
  );
}

interface NetPanelProps extends Drawn {
  readonly net: BoxNet;
  readonly lit: Lit;
  readonly onLight: (lit: Lit) => void;
  readonly onPiece: (id: string) => void;
}

/** The net of one piece on the mat; where a box has several pieces, one is chosen above it. */
export function NetPanel({ net, lit, onLight, onPiece, ...drawn }: NetPanelProps) {
  const words = usePageWords().box;
  const draw = useNetDrawing(drawn);
  const light = useCallback((key: string | null) => onLight(litMark(key)), [onLight]);
  const { pieces } = net;
  return (
    <div className="net-panel">
      {pieces.length > 1 && (
        <ChoiceStrip
          label={words.piece}
          value={drawn.piece.id}
          choices={pieces.map(({ id, label }) => ({ id, label }))}
          onChange={onPiece}
        />
      )}
      <DrawingView draw={draw} lit={useDeferredValue(litKeys(lit))} onLight={light} />
    </div>
  );
}
