import { memo } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { NumberField } from '../../ui/fields/number-field';
import { SelectField } from '../../ui/fields/text-field';
import { Swatch } from '../../ui/frame/swatch';
import { usePageWords } from '../../ui/words';
import type { RecipeEdits } from './recipe-edits';

const NONE = '';

interface PaperChoiceProps extends Pick<Recipe, 'paperId' | 'caliperUm'> {
  readonly edits: RecipeEdits;
}

/** Which paper, and how thick it is: a paper brings its own caliper, which may still be measured and overwritten. */
export const PaperChoice = memo(function PaperChoice({ paperId, caliperUm, edits }: PaperChoiceProps) {
  const words = usePageWords().box;
  const papers = useWorkbook((state) => state.rows.papers);
  const paper = paperId === null ? undefined : papers.get(paperId);
  return (
    <div className="paper-choice">
      <SelectField
        label={words.paper}
        value={paper?.id ?? NONE}
        choices={[
          { id: NONE, label: words.anyPaper },
          ...ownOf(papers, paperId).map(({ id, name }) => ({ id, label: name })),
        ]}
        onChange={(id) => edits.setPaper(id === NONE ? null : id, papers.get(id)?.caliperUm ?? null)}
        help={
          paper && (
            <>
              <Swatch colour={paper.colour} /> {words.gsm(paper.gsm)}
            </>
          )
        }
      />
      <NumberField
        label={words.caliper}
        unit="mm"
        decimals={3}
        value={caliperUm}
        least={50}
        most={2000}
        onChange={edits.setCaliper}
        help={words.caliperHelp}
      />
    </div>
  );
});
