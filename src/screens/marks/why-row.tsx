import type { EasyRow } from '../../core/fit';
import { styleById } from '../../core/styles';
import type { Ticks } from '../../core/units';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { usePageWords, useSay } from '../../ui/words';

interface WhyRowProps {
  readonly row: EasyRow;
  readonly need: readonly [Ticks, Ticks, Ticks];
  readonly styleId: string;
}

const SIDES = ['width', 'depth', 'height'] as const;

/** Where a row's numbers come from: every mark with its roughness, the room side by side, the card, the construction. */
export function WhyRow({ row, need, styleId }: WhyRowProps) {
  const words = usePageWords();
  const say = useSay();
  const ruler = useRuler();
  const long = (length: Ticks) => lengthWords(length, ruler);
  const bare = (length: Ticks) => long(length).replace(` ${ruler.unit}`, '');
  const { marks } = words;
  const options = Object.entries(styleById(styleId)?.options ?? {}).flatMap(([name, { label, choices }]) => {
    const chosen = choices.find(({ id }) => id === row.options[name]);
    return chosen ? [`${say(label)}: ${say(chosen.label)}`] : [];
  });
  return (
    <ul className="why">
      <li>
        {marks.roughnessWhy(
          row.marks.map(({ at, roughness }) => marks.markPart(bare(at), roughness)),
          row.roughness,
        )}
      </li>
      <li>{marks.settings(row.settings, row.edges)}</li>
      <li>
        {marks.excessWhy(
          SIDES.map((side, axis) =>
            marks.excessSide(
              words.contents[side],
              bare(row.inside[axis] ?? row.inside[0]),
              bare(need[axis] ?? need[0]),
            ),
          ),
          `${(row.excess * 100).toFixed(1)} %`,
        )}
      </li>
      <li>
        {marks.paperWhy(
          row.blanks.map(({ piece, across, up }) => marks.paperPart(say(piece), bare(across), long(up))),
        )}
      </li>
      {options.length > 0 && <li>{options.join('; ')}</li>}
    </ul>
  );
}
