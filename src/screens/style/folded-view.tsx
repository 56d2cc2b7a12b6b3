import { useId, useMemo, useState } from 'react';
import { seeFigure } from '../../core/fold/seen/figure';
import { standingView } from '../../core/fold/seen/view';
import type { PieceNet } from '../../core/net/types';
import type { BoxResult } from '../../state/results/box-result';
import { FoldedPicture } from '../../ui/folded/folded-picture';
import { useDraftingWords } from '../../ui/words/drafting-words';

const NOTCHES = 20;

/** The piece as it folds, by a slider from flat to closed; it stays as far closed as the maker left it. */
export function FoldedView({ box, piece }: { readonly box: BoxResult; readonly piece: PieceNet }) {
  const words = useDraftingWords();
  const id = useId();
  const [share, setShare] = useState(1);
  const acts = piece.closing.length;
  const done = share * acts;
  const figures = useMemo(() => {
    const whole = Math.min(Math.floor(done + 1e-9), acts);
    return [
      {
        figure: seeFigure(piece, whole, done - whole < 1e-6 ? 0 : done - whole, standingView(piece)),
        dx: 0,
        dy: 0,
      },
    ];
  }, [piece, acts, done]);
  const percent = Math.round(100 * share);
  const state = share === 0 ? words.flat : share === 1 ? words.closed : words.percent(percent);
  return (
    <div className="style-folded">
      <div className="style-folded-picture">
        <FoldedPicture net={box.net} figures={figures} />
      </div>
      <label htmlFor={id}>{words.foldSlider}</label>
      <input
        id={id}
        type="range"
        className="style-slider"
        min={0}
        max={Math.max(1, acts) * NOTCHES}
        value={Math.round(share * Math.max(1, acts) * NOTCHES)}
        aria-valuetext={state}
        onChange={({ target }) => setShare(Number(target.value) / (Math.max(1, acts) * NOTCHES))}
      />
    </div>
  );
}
