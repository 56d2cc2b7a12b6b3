import { type KeyboardEvent, type MouseEvent, useCallback, useMemo } from 'react';
import type { Recipe } from '../../../shared/workbook';
import type { Draft, Place } from '../../core/draft/draft';
import { SIDES } from '../../core/draft/sides';
import { drawNetToFit } from '../../core/draw/net/net-drawing';
import type { PieceNet } from '../../core/net/types';
import type { At } from '../../core/plane';
import { type Ruler, toMm } from '../../core/units';
import type { BoxResult } from '../../state/results/box-result';
import { useTrace } from '../../state/results/trace-in-hand';
import { DrawingView, type Space } from '../../ui/drawing/drawing-view';
import { useRuler } from '../../ui/fields/measure';
import { keyIn } from '../../ui/frame/keys';
import { useTracing } from '../../ui/trace/use-tracing';
import { NetTouch } from './net-touch';
import { nextPlace } from './next-place';
import { usePanelNames } from './panel-names';
import { sidesOf } from './sides-of';
import type { DraftEdits } from './use-draft';
import { usePulling } from './use-pulling';
import { useSlits } from './use-slits';
import { useTapping } from './use-tapping';
import './style-net.css';

/** Biggest numbers of a net on screen, in millimeters at arm's length. */
const NUMBER_MM = 4;
/** Of the size the net could have, its numbers leave it this share at least. */
const LEAST_SHARE = 0.7;

interface StyleNetProps {
  readonly recipe: Recipe;
  readonly box: BoxResult;
  readonly piece: PieceNet;
  readonly draft: Draft;
  readonly edits: DraftEdits;
}

/** The net, large and to scale, inside face up; a tap takes a panel or an edge in hand, and so do the arrow keys. */
export function StyleNet({ recipe, box, piece, draft, edits }: StyleNetProps) {
  const names = usePanelNames();
  const ruler = useRuler();
  const { place, select } = edits;
  const tracing = useTracing(useTrace(recipe.id), {
    wideMm: toMm(piece.blank.across),
    highMm: toMm(piece.blank.up),
  });
  const sides = useMemo(() => sidesOf(box, draft, piece.id), [box, draft, piece.id]);
  const pulling = usePulling({ draft, values: box.net.values, sides, edits });
  const slits = useSlits({ draft, piece, values: box.net.values, edits });
  const tapping = useTapping({ draft, piece, sides, edits });
  const selects = tapping.tap === 'select';
  const take = (tapped: Place) => (selects ? select(tapped) : tapping.onTap(tapped));
  const draw = useCallback((space: Space) => drawToTouch(piece, space, ruler), [piece, ruler]);
  const panels = Object.values(draft.pieces?.[piece.id]?.panels ?? {});
  const free = selects && !panels.some(({ on }) => on === `${place.panel}.${place.edge}`);
  const over = useCallback(
    (at: (card: At) => At) => <NetTouch piece={piece} sides={sides} place={place} at={at} free={free} />,
    [piece, sides, place, free],
  );
  const onClick = ({ clientX, clientY }: MouseEvent) => {
    const { face, near } = underAt(clientX, clientY);
    const { panel, edge } = (tapping.tap === 'glue' ? face : (near ?? face)) ?? {};
    if (panel !== undefined) take({ piece: piece.id, panel, ...(edge === undefined ? {} : { edge }) });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    // grips and numbers on the drawing hear their own keys
    if (!(event.target instanceof SVGSVGElement)) return;
    if (!selects && keyIn('text', event)?.[0] === 'take') tapping.onTap(place);
    const [act, nth] = keyIn('drawing', event) ?? [];
    if (act !== 'move' || nth === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const way = SIDES[nth];
    const spec = draft.pieces?.[piece.id];
    const next = way && spec && nextPlace(spec, sides, place, way);
    if (next) select(next);
  };
  const selected = place.edge === undefined ? names.panel(place.panel) : names.edge(place.panel, place.edge);
  return (
    <>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the drawing inside has the focus and is heard here; lists beside it do the same */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: arrows are heard on their way to the drawing */}
      <div className="style-net" onClick={onClick} onKeyDownCapture={onKeyDown}>
        <DrawingView
          draw={draw}
          under={tracing.under}
          over={(at) => (
            <>
              {over(at)}
              {tracing.over(at)}
            </>
          )}
          hands={(at) =>
            selects ? (
              <>
                {pulling.hands(at)}
                {slits.hands(at)}
              </>
            ) : (
              tapping.hands(at)
            )
          }
        />
        {tapping.tools}
        {selects && pulling.tools}
        <p role="status" className="said-only">
          {selected}
        </p>
      </div>
      {tracing.tools}
    </>
  );
}

const drawToTouch = (piece: PieceNet, space: Space, ruler: Ruler) =>
  drawNetToFit(piece, space, {
    ruler,
    textMm: NUMBER_MM,
    upright: true,
    least: LEAST_SHARE,
    show: { otherUnit: false, areas: false },
  });

/** The panel and the edge under a point of the window. */
function underAt(clientX: number, clientY: number) {
  const under = document
    .elementsFromPoint(clientX, clientY)
    .flatMap((each) =>
      each instanceof SVGElement && each.dataset['panel'] !== undefined ? [each.dataset] : [],
    );
  const face = under.find((each) => each['edge'] === undefined);
  const edges = under.filter((each) => each['edge'] !== undefined);
  // along a slit two edges lie on one line: the one of the panel that was tapped is meant
  const near = edges.find((each) => each['panel'] === face?.['panel']) ?? edges[0];
  return { face, near };
}
