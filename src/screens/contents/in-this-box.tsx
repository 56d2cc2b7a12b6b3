import { Check, Flag } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { type NeededRoom, openingOf, passesOpening, protrusionsOf, sizesForRoom } from '../../core/fit';
import { begunNew } from '../../core/net';
import type { Contents } from '../../core/rows/contents';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { OWN_NET } from '../../core/styles';
import { nearestMark, type Ticks, toMm } from '../../core/units';
import { boxOfRecipe } from '../../state/results/box-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { Button } from '../../ui/fields/button';
import { lengthWords, sizeWords, useRuler } from '../../ui/fields/measure';
import { classNames } from '../../ui/frame/class-names';
import { usePageWords } from '../../ui/words';
import type { ContentsEdits } from './contents-edits';

interface InThisBoxProps {
  readonly recipe: Recipe;
  readonly contents: Contents;
  readonly room: NeededRoom;
  readonly edits: ContentsEdits;
}

const SIDES = ['width', 'depth', 'height'] as const;

/** Whether the chosen way goes into the box as it is: its room, its opening, its rim; with the one press that makes it large enough. */
export function InThisBox({ recipe, contents, room, edits }: InThisBoxProps) {
  const words = usePageWords().contents;
  const ruler = useRuler();
  const tool = useToolInHand();
  const box = boxOfRecipe(recipe, tool);
  if (!box) return null;
  const { net, style } = box;
  const say = (length: (typeof room.inside)[number]) => lengthWords(length, ruler);
  const short = SIDES.flatMap((side, axis) => {
    const need = room.inside[axis];
    return need !== undefined && net.inside[side] < need
      ? [words.short(words[side], say(net.inside[side]), say(need))]
      : [];
  });
  const opening = openingOf(style, net);
  const passes = passesOpening(room.arrangement, opening);
  const clear = sizeWords(opening.clear, ruler);
  const grow = () => {
    const held = Object.fromEntries(
      (recipe.held ?? []).flatMap((name) => {
        const mm = recipe.sizesMm[name];
        return mm ? [[name, ticksOfMm(mm)]] : [];
      }),
    );
    // a box that was begun new keeps what new boxes begin with, such as a lid half as deep
    const isNew = Object.entries(style.symbols).some(
      ([name, { forNew }]) => forNew !== undefined && recipe.sizesMm[name] !== undefined,
    );
    const sizes = sizesForRoom({
      style: isNew ? begunNew(style) : style,
      caliperUm: recipe.caliperUm,
      need: room.inside,
      slack: ticksOfMm(0),
      ruler,
      held,
      options: recipe.options,
    });
    const onMarks = ([name, size]: [string, Ticks]) =>
      [name, mmOfTicks(held[name] ?? nearestMark(size, ruler.finest))] as const;
    edits.setSizes(Object.fromEntries(Object.entries(sizes).map(onMarks)));
  };
  return (
    <section className="in-this-box" aria-labelledby="in-this-box-head">
      <h2 id="in-this-box-head">{words.inBox}</h2>
      <ul className="checks">
        <CheckLine sound={short.length === 0}>
          {short.length === 0 ? words.goesIn : `${words.tooSmall} ${short.join(' ')}`}
        </CheckLine>
        <CheckLine sound={passes}>
          {(passes ? words.passes : words.blocked)(opening.way, clear)}
          {opening.flaps > 0 && words.flapsTaken(toMm(opening.flaps).toFixed(2))}
        </CheckLine>
        {protrusionsOf(contents, style, net).map((fault) => (
          <CheckLine key={`${fault.code} ${fault.item}`} sound={false}>
            {fault.code === 'closed-top'
              ? words.closedTop(fault.item)
              : words.rimTooLow(fault.item, say(fault.has), say(fault.least))}
          </CheckLine>
        ))}
      </ul>
      {short.length > 0 &&
        (style === OWN_NET ? (
          <p className="field-help">{words.ownNetStands}</p>
        ) : (
          <Button onClick={grow}>{words.setSizes}</Button>
        ))}
    </section>
  );
}

function CheckLine({ sound, children }: { sound: boolean; children: ReactNode }) {
  return (
    <li className={classNames('check', !sound && 'check-flag')}>
      {sound ? <Check aria-hidden="true" /> : <Flag aria-hidden="true" />}
      <span>{children}</span>
    </li>
  );
}
