import { useNavigate } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import type { FamilyMember } from '../../core/fit';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { sizeWords, useRuler } from '../../ui/fields/measure';
import { TextField } from '../../ui/fields/text-field';
import { pageAddress } from '../../ui/frame/addresses';
import { usePageWords } from '../../ui/words';
import { contentOfMember } from './family-content';
import type { NamedSheet } from './marks-ask';
import { costWords, sizesWords } from './row-words';

interface FamilyFoundProps {
  readonly recipe: Recipe;
  readonly found: readonly FamilyMember[];
  /** As the recipes will be called: no two alike, and none as another on the shelf. */
  readonly names: readonly string[];
  /** As they stand in their fields. */
  readonly fields: readonly string[];
  readonly onName: (place: number, name: string) => void;
  readonly busy: boolean;
  readonly sheet: NamedSheet;
}

/** The sizes that were found, each with a name of the maker's own; and a press that makes recipes of them. */
export function FamilyFound({ recipe, found, names, fields, onName, busy, sheet }: FamilyFoundProps) {
  const words = usePageWords().marks;
  const ruler = useRuler();
  const createAll = useWorkbook((state) => state.createAll);
  const navigate = useNavigate();
  const made = found.flatMap(({ row }) => row ?? []);
  if (found.length === 0) return null;
  const make = () => {
    const answer = createAll(
      'recipes',
      made.map((row, place) => contentOfMember(recipe, row, names[place] ?? recipe.name, ruler.finest)),
      words.family,
    );
    if (answer.ok && answer.ids[0] !== undefined)
      void navigate(pageAddress({ kind: 'recipe', id: answer.ids[0] }, 'box'));
  };
  return (
    <>
      <div className="marks-table">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.member}</th>
              <th scope="col">{words.sizes}</th>
              <th scope="col">{words.roomIs}</th>
              <th scope="col">{words.costs}</th>
            </tr>
          </thead>
          <tbody>
            {found.map(({ need, row, outside, ends }, place) => (
              <tr key={need.join(' ')}>
                <th scope="row">
                  {row ? (
                    <TextField
                      label={words.memberNameLabel(place + 1)}
                      value={fields[place] ?? ''}
                      help={
                        fields[place]?.trim() === names[place]
                          ? undefined
                          : words.memberCalled(names[place] ?? '')
                      }
                      onChange={(name) => onName(place, name)}
                    />
                  ) : (
                    fields[place]
                  )}
                </th>
                {row ? (
                  <>
                    <td className="marks-number">{sizesWords(recipe.styleId, row, ruler)}</td>
                    <td className="marks-number">
                      {words.insideOutside(sizeWords(row.inside, ruler), sizeWords(outside, ruler))}
                    </td>
                    <td>{costWords(row, need, sheet.name, ruler, words)}</td>
                  </>
                ) : (
                  <td colSpan={3}>
                    {words.memberNone(sizeWords(need, ruler), sheet.name, ends?.because ?? 'marks')}
                    {ends?.ways.map(
                      (way) =>
                        way.kind === 'turned' && (
                          <p key={way.kind}>{words.turned(sizeWords(way.need, ruler))}</p>
                        ),
                    )}
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {!busy && made.length > 0 && (
        <Button tone="act" onClick={make}>
          {words.makeFamily(made.length)}
        </Button>
      )}
    </>
  );
}
