import { Link } from 'react-router';
import type { Paper, Recipe } from '../../../shared/workbook';
import type { PieceNet } from '../../core/net';
import { cuttingToolOf, GRAIN_OF_RECIPE, sheetOfPaper } from '../../core/plan';
import { boxOfRecipe } from '../../state/results/box-result';
import { useSheetCounts } from '../../state/results/sheet-counts';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { SheetView } from '../../ui/drawing/sheet-view';
import { pageAddress, SHELF } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import { Swatch } from '../../ui/frame/swatch';
import { usePageWords } from '../../ui/words';

/** A recipe without an event: how many of each piece one sheet of every paper gives, and how it is cut. */
export function OneSheetOfEach({ recipe }: { recipe: Recipe }) {
  const words = usePageWords().sheets;
  const papers = useWorkbook((state) => state.rows.papers);
  const box = boxOfRecipe(recipe, useToolInHand());
  if (papers.size === 0)
    return (
      <BlankState
        title={words.noPapers}
        act={
          <Link className="button button-act" to={SHELF}>
            {words.toShelf}
          </Link>
        }
      >
        <p>{words.noPapersWhy}</p>
      </BlankState>
    );
  return (
    <div className="sheets-page">
      <header className="one-sheet-head">
        <h2>{words.oneSheet}</h2>
        <Link className="button button-plain" to={pageAddress({ kind: 'recipe', id: recipe.id }, 'event')}>
          {words.planMany}
        </Link>
      </header>
      <div className="layouts">
        {ownOf(papers).flatMap((paper) =>
          (box?.net.pieces ?? []).map((piece) => (
            <PieceOnPaper
              key={`${paper.id} ${piece.id}`}
              paper={paper}
              piece={piece}
              grain={GRAIN_OF_RECIPE[recipe.grain]}
            />
          )),
        )}
      </div>
    </div>
  );
}

function PieceOnPaper({
  paper,
  piece,
  grain,
}: {
  paper: Paper;
  piece: PieceNet;
  grain: 'up' | 'across' | 'free';
}) {
  const words = usePageWords().sheets;
  const tool = useToolInHand();
  const sheet = sheetOfPaper(paper);
  const part = { id: piece.id, across: piece.blank.across, up: piece.blank.up, grain };
  const [counted] = useSheetCounts([{ part, paper: sheet, tool: cuttingToolOf(tool) }]);
  if (!counted) return null;
  const { count, layout, exact } = counted;
  return (
    <article className="layout" aria-busy={!exact}>
      <h3>
        <Swatch colour={paper.colour} /> {words.fromOne(count, piece.label, paper.name)}
      </h3>
      {!exact && <p className="soft">{words.stillCounting}</p>}
      {layout ? (
        <SheetView layout={layout} paper={sheet} parts={[{ id: piece.id, mark: 'A', name: piece.label }]} />
      ) : (
        exact && <p className="soft">{words.doesNotFit}</p>
      )}
    </article>
  );
}
