import { useCallback } from 'react';
import { useNavigate } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { drawArrangement } from '../../core/draw/sheet/arrangement-drawing';
import { clearanceOf, type NeededRoom } from '../../core/fit';
import { styleById } from '../../core/styles';
import { millimetres, printLength, type Ticks } from '../../core/units';
import { DrawingView, type Space } from '../../ui/drawing/drawing-view';
import { Button } from '../../ui/fields/button';
import { lengthWords, sizeWords, useRuler } from '../../ui/fields/measure';
import { pageAddress, type Workbook } from '../../ui/frame/addresses';
import { classNames } from '../../ui/frame/class-names';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';
import type { ContentsEdits } from './contents-edits';

const TEXT_MM = 3.9; // a caption at arm's length: 14 px and a little
const DRAWN = 6; // more pictures than this are a wall; a table has the others

interface WaysToLieProps {
  readonly recipe: Recipe;
  readonly rooms: readonly NeededRoom[];
  readonly stale: boolean;
  readonly chosen: number;
  readonly edits: ContentsEdits;
  readonly workbook: Workbook;
}

/** The ways nothing beats, drawn from above and from the front; where there are many, the others as a table. */
export function WaysToLie({ recipe, rooms, stale, chosen, edits, workbook }: WaysToLieProps) {
  const words = usePageWords().contents;
  const navigate = useNavigate();
  const empty = !recipe.contents || recipe.contents.items.length === 0;
  const take = (way: number) => {
    edits.chooseWay(way);
    void navigate(pageAddress(workbook, 'marks', recipe.id));
  };
  return (
    <section className="ways" aria-labelledby="ways-head" aria-busy={stale}>
      <h2 id="ways-head">{words.ways}</h2>
      {empty && <p className="soft">{words.waysNone}</p>}
      {!empty && rooms.length === 0 && <p role="status">{words.working}</p>}
      {!empty && rooms.length > 0 && (
        <div className={classNames(stale && 'is-stale')}>
          <ul className="way-cards">
            {rooms.slice(0, DRAWN).map((room, i) => (
              <li key={`${room.arrangement.pattern} ${room.inside.join(' ')}`}>
                <WayCard
                  room={room}
                  recipe={recipe}
                  chosen={i === chosen}
                  onTake={() => take(i)}
                  onChoose={() => edits.chooseWay(i)}
                />
              </li>
            ))}
          </ul>
          {rooms.length > DRAWN && <WayTable rooms={rooms} chosen={chosen} onChoose={edits.chooseWay} />}
        </div>
      )}
    </section>
  );
}

interface WayCardProps {
  readonly room: NeededRoom;
  readonly recipe: Recipe;
  readonly chosen: boolean;
  readonly onTake: () => void;
  readonly onChoose: () => void;
}

function WayCard({ room, recipe, chosen, onTake, onChoose }: WayCardProps) {
  const words = usePageWords().contents;
  const ruler = useRuler();
  const { arrangement, inside } = room;
  const draw = useCallback(
    (space: Space) =>
      drawArrangement(arrangement.placed, inside, arrangement.pattern, space, { ruler, textMm: TEXT_MM }),
    [arrangement, inside, ruler],
  );
  return (
    <article className={classNames('way-card', chosen && 'way-chosen')}>
      <h3>
        {arrangement.pattern}
        {chosen && <span className="way-mark"> {words.chosen}</span>}
      </h3>
      <div className="way-drawing">
        <DrawingView draw={draw} still />
      </div>
      <p>
        {words.needs(sizeWords(inside, ruler))}{' '}
        <span className="soft">{arrangement.exact ? words.exact : words.notExact}</span>
      </p>
      <WhyThisRoom room={room} recipe={recipe} />
      <div className="way-acts">
        {!chosen && (
          <Button tone="quiet" onClick={onChoose}>
            {words.choose}
            <span className="said-only"> {arrangement.pattern}</span>
          </Button>
        )}
        {recipe.ownNet === undefined && (
          <Button tone={chosen ? 'act' : 'plain'} onClick={onTake}>
            {words.findMarks}
          </Button>
        )}
      </div>
    </article>
  );
}

const SIDES = ['width', 'depth', 'height'] as const;

/** Things and air, side by side; then what the style makes of it from score to score. */
function WhyThisRoom({ room: { arrangement, inside }, recipe }: { room: NeededRoom; recipe: Recipe }) {
  const words = usePageWords();
  const ruler = useRuler();
  const style = styleById(recipe.styleId);
  const air = recipe.contents ? clearanceOf(recipe.contents) : null;
  const both = (length: Ticks) => `${lengthWords(length, ruler)} (${printLength(length, ruler).other})`;
  return (
    <Opening head={words.contents.why}>
      <ul className="why">
        {SIDES.map((side, axis) => (
          <li key={side}>
            {words.contents.side(
              words.contents[side],
              both(millimetres(arrangement.size[axis] ?? 0)),
              both(air?.length ?? millimetres(0)),
              both(inside[axis] ?? millimetres(0)),
            )}
          </li>
        ))}
        {air && <li>{words.contents.airIs(both(air.length), words.contents.airKinds[air.kind])}</li>}
        {style && (
          <li>
            {words.contents.scoreToScore(
              style.name,
              style.inside,
              `${(recipe.caliperUm / 1000).toFixed(2)} mm`,
            )}
          </li>
        )}
      </ul>
    </Opening>
  );
}

interface WayTableProps {
  readonly rooms: readonly NeededRoom[];
  readonly chosen: number;
  readonly onChoose: (way: number) => void;
}

function WayTable({ rooms, chosen, onChoose }: WayTableProps) {
  const words = usePageWords().contents;
  const ruler = useRuler();
  return (
    <div className="way-table">
      <table>
        <caption>
          {words.table} <span className="soft">({ruler.unit})</span>
        </caption>
        <thead>
          <tr>
            <th scope="col">{words.way}</th>
            {SIDES.map((side) => (
              <th key={side} scope="col">
                {words[side]}
              </th>
            ))}
            <th scope="col">{words.among}</th>
            <th scope="col">{words.choose}</th>
          </tr>
        </thead>
        <tbody>
          {rooms.slice(DRAWN).map(({ arrangement, inside }, at) => (
            <tr
              key={`${arrangement.pattern} ${inside.join(' ')}`}
              aria-current={at + DRAWN === chosen || undefined}
            >
              <th scope="row">{arrangement.pattern}</th>
              {inside.map((side, axis) => (
                <td key={SIDES[axis]}>{lengthWords(side, ruler).replace(` ${ruler.unit}`, '')}</td>
              ))}
              <td>{arrangement.exact ? words.exact : words.notExact}</td>
              <td>
                {at + DRAWN === chosen ? (
                  words.chosen
                ) : (
                  <Button tone="quiet" onClick={() => onChoose(at + DRAWN)}>
                    {words.choose}
                    <span className="said-only"> {arrangement.pattern}</span>
                  </Button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
