import { inches } from '../../core/units';
import { LengthField } from '../../ui/fields/length-field';
import { SelectField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { usePickingWords } from '../../ui/words/picking-words';
import { FIRST_SIZES, type KnownFacts } from './style-facts';

const SIDES = ['width', 'depth', 'height'] as const;
const LETTER = '';
const LEAST = inches(0, 1, 2);
const MOST = inches(12);

/** From which sheet, and at what size, the sheets on each tile are counted. */
export function SheetsAtSize({ facts }: { facts: KnownFacts }) {
  const words = usePickingWords();
  const { sizes, setSizes, papers, paperId, setPaperId } = facts;
  const help = { width: words.widthHelp, depth: words.depthHelp, height: words.heightHelp };
  return (
    <Opening head={words.ownSize}>
      <div className="sheets-at-size">
        <p className="soft">{words.ownSizeHelp}</p>
        {SIDES.map((side) => (
          <LengthField
            key={side}
            label={words[side]}
            help={help[side]}
            value={sizes?.[side] ?? FIRST_SIZES[side]}
            least={LEAST}
            most={MOST}
            together={{
              fields: SIDES.map((each) => ({
                label: words[each],
                value: sizes?.[each] ?? FIRST_SIZES[each],
                least: LEAST,
                most: MOST,
              })),
              onAll: ([width, depth, height]) =>
                setSizes({ ...FIRST_SIZES, ...(width && depth && height && { width, depth, height }) }),
            }}
            onChange={(length) => setSizes({ ...FIRST_SIZES, ...sizes, [side]: length })}
          />
        ))}
        <SelectField
          label={words.sheet}
          help={words.sheetHelp}
          value={paperId ?? LETTER}
          choices={[
            { id: LETTER, label: words.letter },
            ...papers.map(({ id, name }) => ({ id, label: name })),
          ]}
          onChange={(id) => setPaperId(id === LETTER ? null : id)}
        />
      </div>
    </Opening>
  );
}
