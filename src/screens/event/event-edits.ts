import { useMemo } from 'react';
import type {
  Carrier,
  EventLine,
  FavorEvent,
  Guest,
  Lesson,
  NameCards,
  Pace,
  Recipe,
} from '../../../shared/workbook';
import { lessonOf, USUAL_LESSON, USUAL_PACE, withGuests } from '../../core/plan';
import { useWorkbook } from '../../state/use-workbook';
import { usePageWords } from '../../ui/words';

/**
 * A count as it stands when an order of favors becomes one of kits, or back: the order stays as near as whole kits allow, so 24 favors are
 * two in each of twelve kits. Fewer than one a kit is taken as what a kit holds.
 */
function countIn(kits: number | null, before: number | null, count: number): number {
  if (kits !== null && before === null && count >= kits) return Math.round(count / kits);
  return kits === null && before !== null ? count * before : count;
}

/** Every change a maker can make to an event, each one undo step under the name they see. */
export function useEventEdits(id: string) {
  const edit = useWorkbook((state) => state.edit);
  const { event: words, guests: guestWords } = usePageWords();
  return useMemo(() => {
    const change = (label: string, to: (event: FavorEvent) => FavorEvent) => edit('events', id, label, to);
    const lines = (label: string, to: (lines: FavorEvent['lines']) => FavorEvent['lines']) =>
      change(label, (event) => ({ ...event, lines: to(event.lines) }));
    return {
      setDate: (date: string) =>
        change(words.date, (event) => ({ ...event, date: date === '' ? null : date })),
      setSpares: (spares: FavorEvent['spares']) => change(words.spares, (event) => ({ ...event, spares })),
      setTape: (tapeId: string | null) => change(words.tape, (event) => ({ ...event, tapeId })),
      setGlue: (glueId: string | null) => change(words.glue, (event) => ({ ...event, glueId })),
      setTool: (toolId: string | null) => change(words.tool, (event) => ({ ...event, toolId })),
      setKits: (kits: number | null) =>
        change(words.kits, (event) => ({
          ...event,
          kits,
          lines: event.lines.map((line) =>
            line.byTable || line.byGuests
              ? line
              : { ...line, count: countIn(kits, event.kits ?? null, line.count) },
          ),
          ...(kits !== null && event.kits == null && { lesson: event.lesson ?? USUAL_LESSON }),
        })),
      setLesson: (label: string, part: Partial<Lesson>) =>
        change(label, (event) => ({ ...event, lesson: { ...lessonOf(event), ...part } })),
      setGuests: (label: string, guests: readonly Guest[]) =>
        change(label, (event) => withGuests(event, guests)),
      shareGuests: (share: boolean) =>
        change(guestWords.share, ({ shareGuests: _, ...event }) =>
          share ? { ...event, shareGuests: true } : event,
        ),
      setCarry: (label: string, carry: Carrier | undefined) =>
        change(label, ({ carry: _, ...event }) => (carry ? { ...event, carry } : event)),
      setNameCards: (label: string, nameCards: NameCards) =>
        change(label, (event) => ({ ...event, nameCards })),
      setPace: (label: string, part: Partial<Pace>) =>
        change(label, (event) => ({ ...event, pace: { ...(event.pace ?? USUAL_PACE), ...part } })),
      /** The same box once more, for another paper or another dressing. */
      copyLine: (line: EventLine) =>
        lines(words.copyLine, (all) => {
          const { byTable: _, ...plain } = line;
          return all.flatMap((each) =>
            each.id === line.id ? [each, { ...plain, id: freshId(line.recipeId, all) }] : [each],
          );
        }),
      changeLine: (line: EventLine, label: string) =>
        lines(label, (all) => all.map((each) => (each.id === line.id ? line : each))),
      removeLine: (lineId: string) =>
        lines(words.removeLine, (all) => all.filter((each) => each.id !== lineId)),
      addLine: (recipe: Recipe, count: number) =>
        lines(words.addLine, (all) => [
          ...all,
          {
            id: freshId(recipe.id, all),
            recipeId: recipe.id,
            dressingId: recipe.dressings[0]?.id ?? null,
            paperId: null,
            count,
          },
        ]),
    };
  }, [edit, id, words, guestWords]);
}

/** A recipe may stand on several lines: `seed-box`, `seed-box-2`, … */
function freshId(recipeId: string, lines: readonly EventLine[]): string {
  const base = recipeId.slice(0, 58);
  for (let number = 1; ; number++) {
    const id = number === 1 ? base : `${base}-${number}`;
    if (lines.every((line) => line.id !== id)) return id;
  }
}

export type EventEdits = ReturnType<typeof useEventEdits>;
