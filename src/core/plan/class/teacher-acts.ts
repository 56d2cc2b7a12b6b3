import type { FavorEvent, Pace } from '../../rows';
import type { KitList } from '../event/kit-list';
import type { ActCounts, PlannedLine } from '../event/types';
import { sumActs, timesActs } from '../run/hand-acts';
import { lessonOf } from './usual-lesson';

/**
 * Hand acts the maker does for one line: all of them for favors. For a class only what is done ahead for the kits, and every act of the
 * boxes that are shown or practiced on; the rest is the learners' work.
 */
export function ownActs(line: PlannedLine, event: Pick<FavorEvent, 'kits' | 'lesson'>): ActCounts {
  const { acts, making, practice } = line;
  if (!event.kits) return timesActs(acts, making);
  const { ahead } = lessonOf(event);
  const prepared = Object.fromEntries(
    Object.entries(acts).filter(([act]) => ahead.some((one) => one === act)),
  );
  return sumActs(timesActs(prepared, making - practice), timesActs(acts, practice));
}

/** Putting kits together: each card, each length and each kind of counted thing is put in once. */
export function packingActs(kit: KitList | null): ActCounts {
  if (!kit) return {};
  const { cards, lengths, counted, packing } = kit;
  const put = [...cards, ...counted].filter(({ count }) => count > 0).length + lengths.length;
  return { fill: put * packing };
}

/** A pace without timed boxes: a whole box that was timed says nothing of the part a teacher does. */
export const withoutTrials = (pace: Pace | undefined): Pace | undefined =>
  pace && { ...pace, trialSeconds: [] };
