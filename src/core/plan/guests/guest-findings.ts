import type { Allergen, FavorEvent, Guest, Supply } from '../../rows';
import { allergensAsked, allergensUsual } from '../../rows/allergens';
import { hazardsNamed } from '../../rows/cautions';
import type { EventBox } from '../event/event-boxes';
import type { EventFinding } from '../event/types';
import { guestsByLine, lineOfGuest } from './guest-counts';

/** Something in a favor, as far as it matters to who eats it. */
interface Given {
  readonly name: string;
  /** What its label names; null where nobody has entered it. */
  readonly label: readonly Allergen[] | null;
  readonly isFood: boolean;
}

/** What guests ask for, held against what goes into their favors; and lines whose count is not that of their guests. */
export function findForGuests(
  event: FavorEvent,
  boxes: readonly EventBox[],
  supplies: readonly Supply[],
): readonly EventFinding[] {
  const given = new Map(boxes.map((box) => [box.line.id, thingsIn(box, supplies)]));
  const counts = guestsByLine(event);
  return [
    ...(event.guests ?? []).flatMap((guest) => {
      const lineId = lineOfGuest(event, guest)?.id ?? '';
      return findForGuest(guest, given.get(lineId) ?? []);
    }),
    ...boxes.flatMap(({ line, recipe }): EventFinding[] => {
      const guests = counts.get(line.id) ?? 0;
      if (!line.byGuests || guests === line.count) return [];
      return [
        {
          code: 'guests-differ',
          severity: 'warn',
          where: line.id,
          about: recipe.name,
          says: '{guests} guests get this favor, and the count says {count}.',
          facts: { guests: { count: guests }, count: { count: line.count } },
          remedy: 'Count the list again, or type the count you want.',
        },
      ];
    }),
  ];
}

function thingsIn({ recipe, dressing }: EventBox, supplies: readonly Supply[]): readonly Given[] {
  const items = (recipe.contents?.items ?? []).map(({ name, care, allergens }) => ({
    name,
    label: allergens ?? null,
    isFood: care.some((flag) => flag === 'food' || flag === 'allergens' || flag === 'choking-food'),
  }));
  const gifts = (dressing?.counted ?? []).flatMap(({ name, supplyId }) =>
    supplies.some(({ id, kind }) => id === supplyId && kind === 'contents')
      ? [{ name, label: null, isFood: false }]
      : [],
  );
  return [...items, ...gifts];
}

const REMEDY = 'Read the label of the food itself. If in doubt, give this guest another favor.';

function findForGuest({ id, name, needs }: Guest, given: readonly Given[]): EventFinding[] {
  const asked = allergensAsked(needs);
  if (asked.length === 0) return [];
  return given.flatMap((thing): EventFinding[] => {
    const { label, isFood } = thing;
    const named = asked.filter((each) => (label ?? allergensUsual(thing.name)).includes(each));
    const facts = { needs: { text: needs }, thing: { text: thing.name }, foods: named };
    const base = { where: `${id}.${thing.name}`, about: name, remedy: REMEDY };
    if (named.length > 0)
      return [
        {
          ...base,
          code: 'guest-allergen',
          severity: 'warn',
          facts,
          says: label
            ? 'Asks for “{needs}”. The label of {thing}, as you entered it, names {foods}.'
            : 'Asks for “{needs}”. {thing} usually contains {foods}.',
        },
      ];
    if (label === null && (isFood || allergensUsual(thing.name).length > 0 || isNamedFood(thing.name)))
      return [
        {
          ...base,
          code: 'guest-label-unread',
          severity: 'warn',
          facts,
          says: 'Asks for “{needs}”. We don’t know what {thing} contains.',
        },
      ];
    return [];
  });
}

const isNamedFood = (name: string): boolean =>
  hazardsNamed(name).some((hazard) => hazard === 'choking-food' || hazard === 'honey');
