import { useNavigate } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { newWay } from '../../core/checks/new-way';
import { newSizesForRoom } from '../../core/fit';
import { type BoxNet, newOptions } from '../../core/net';
import type { BoxStyle } from '../../core/styles';
import { type Ruler, ticks } from '../../core/units';
import { sayReason } from '../../core/units/reason';
import { boxOfRecipe } from '../../state/results/box-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { pageAddress } from '../../ui/frame/addresses';
import { useWording } from '../../ui/frame/wording';
import { usePageWords } from '../../ui/words';
import { markMmOf, sizesMmOf } from './marks-edits';

/** What a style of the same room is called among boxes of the shelf; no recipe is called so. */
export const sameRoomId = (styleId: string): string => `same-room:${styleId}`;

/** The recipe in another style, at the least marks that give the same room. */
export function inStyle(
  recipe: Recipe,
  style: BoxStyle,
  { width, depth, height }: BoxNet['inside'],
  ruler: Ruler,
): Recipe {
  const { ownNet: _, ownStyle: __, ...same } = recipe;
  const sizesWith = (options: Recipe['options']) =>
    newSizesForRoom({
      style,
      caliperUm: recipe.caliperUm,
      need: [width, depth, height],
      slack: ticks(0),
      ruler,
      held: {},
      options,
    });
  const options = newWay(style, sizesWith(newOptions(style)), recipe.caliperUm);
  const sizes = sizesWith(options);
  return {
    ...same,
    id: sameRoomId(style.id),
    styleId: style.id,
    options,
    dressings: [],
    held: [],
    sizesMm: sizesMmOf({ sizes }),
    ...markMmOf(ruler.finest),
  };
}

/** A press that keeps what is compared; or why the style cannot be made with this room, each limit with its remedy. */
export function KeepStyle({ recipe }: { readonly recipe: Recipe }) {
  const words = usePageWords().marks;
  const wording = useWording();
  const createAll = useWorkbook((state) => state.createAll);
  const navigate = useNavigate();
  const stops = (boxOfRecipe(recipe, useToolInHand())?.findings ?? []).filter(
    ({ severity }) => severity === 'stop',
  );
  const keep = () => {
    const { id: _, rev: __, createdAt: ___, changedAt: ____, ...content } = recipe;
    const answer = createAll('recipes', [content], words.keepStyle);
    if (answer.ok && answer.ids[0] !== undefined)
      void navigate(pageAddress({ kind: 'recipe', id: answer.ids[0] }, 'box'));
  };
  if (stops.length === 0) return <Button onClick={keep}>{words.keepStyle}</Button>;
  return (
    <ul className="beside-stops" role="status">
      {stops.map((stop) => (
        <li key={`${stop.code} ${stop.where}`}>
          {sayReason(stop, wording)}{' '}
          <span className="soft">{sayReason({ ...stop, says: stop.remedy }, wording)}</span>
        </li>
      ))}
    </ul>
  );
}
