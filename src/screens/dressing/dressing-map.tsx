import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import type { Dressing, Recipe } from '../../../shared/workbook';
import { drawDecorateMap, drawDecorateMapToFit } from '../../core/draw/net/decorate-map';
import type { Drawing } from '../../core/draw/strokes/types';
import { placePieces, type SizedPiece } from '../../core/dress';
import type { BoxNet } from '../../core/net';
import { DrawingView, type Space } from '../../ui/drawing/drawing-view';
import { Legend } from '../../ui/drawing/legend';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { useRuler } from '../../ui/fields/measure';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';
import { usePageWords } from '../../ui/words';

/** Names on the panels, in millimeters at arm's length. */
const TEXT_MM = 4;

/** The words above the map say what its arrows are. */
const spokenFor = (map: Drawing): Drawing => ({
  ...map,
  marks: map.marks.filter((mark) => mark.kind === 'text' || mark.ink !== 'move'),
});

interface DressingMapProps {
  readonly recipe: Recipe;
  readonly net: BoxNet;
  readonly dressing: Dressing | null;
  readonly sized: readonly SizedPiece[];
}

/** The flat card with its outside up: what is stuck on where, which way is up, what stays bare; and the same on paper at true size. */
export function DressingMap({ recipe, dressing, ...newest }: DressingMapProps) {
  const words = usePageWords().dressing;
  // Typing goes first; the drawing follows when there is time.
  const net = useDeferredValue(newest.net);
  const sized = useDeferredValue(newest.sized);
  const ruler = useRuler();
  const printer = usePrinter();
  const [chosen, setChosen] = useState('');
  const piece = net.pieces.find(({ id }) => id === chosen) ?? net.pieces[0];
  const placed = useMemo(() => placePieces(net, sized), [net, sized]);
  const draw = useCallback(
    (space: Space) => drawDecorateMapToFit(piece!, space, { ruler, textMm: TEXT_MM, placed }),
    [piece, ruler, placed],
  );
  const legend = useMemo(
    () => (piece ? [spokenFor(drawDecorateMap(piece, { ruler, scale: 1, textMm: TEXT_MM }))] : []),
    [piece, ruler],
  );
  if (!piece) return null;
  return (
    <section className="dressing-map" aria-labelledby="map-head">
      <h2 id="map-head">{words.mapHead}</h2>
      <p className="soft">{words.mapWhy}</p>
      {net.pieces.length > 1 && (
        <ChoiceStrip
          label={words.piece}
          value={piece.id}
          choices={net.pieces.map(({ id, label }) => ({ id, label }))}
          onChange={setChosen}
        />
      )}
      <DrawingView draw={draw} />
      <Legend drawings={legend} />
      <PrintActs
        acts={[
          {
            label: words.printMap,
            make: (paper) => printer.decorateMap(recipe, dressing?.id ?? null, paper),
          },
        ]}
      />
    </section>
  );
}
