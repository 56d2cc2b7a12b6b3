import type { Recipe } from '../../../shared/workbook';
import { cuttingToolOf, sheetOfPaper } from '../../core/plan';
import { LETTER } from '../../core/plan/event/style-facts';
import { countOnSheet } from '../../core/yield';
import type { BoxResult } from '../../state/results/box-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { sizeWords, useRuler } from '../../ui/fields/measure';
import { useDraftingWords } from '../../ui/words/drafting-words';

interface RoomAndPaperProps {
  readonly box: BoxResult;
  readonly recipe: Recipe;
  readonly piece: string;
}

/** The room inside, and the paper that this piece takes. */
export function RoomAndPaper({ box, recipe, piece: id }: RoomAndPaperProps) {
  const words = useDraftingWords();
  const ruler = useRuler();
  const tool = useToolInHand();
  const paper = useWorkbook((state) => state.rows.papers.get(recipe.paperId ?? ''));
  const piece = box.net.pieces.find((each) => each.id === id);
  if (piece === undefined) return null;
  const { across, up } = piece.blank;
  const sheet = paper ? sheetOfPaper(paper) : LETTER;
  const { count } = countOnSheet({ id, across, up, grain: 'free' }, sheet, cuttingToolOf(tool));
  const name = paper?.name ?? words.letter;
  const { width, depth, height } = box.net.inside;
  return (
    <dl className="style-room">
      <div>
        <dt>{words.inside}</dt>
        <dd>{sizeWords([width, depth, height], ruler)}</dd>
      </div>
      <div>
        <dt>{words.blank}</dt>
        <dd>
          {sizeWords([across, up], ruler)}
          <span className="caption soft">
            {count > 0 ? words.perSheet(count, name) : words.noneOnSheet(name)}
          </span>
        </dd>
      </div>
    </dl>
  );
}
