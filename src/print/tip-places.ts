import type { Handout } from '../../shared/workbook';
import { type BoxCard, type CardStep, type StepSubject, subjectOf } from '../core/bench';

type Tip = Handout['tips'][number];

/** Where a maker's tips are shown; each in one place. */
export interface TipPlaces {
  /** At the head: they are for the whole box. */
  readonly before: readonly Tip[];
  /** Under one step of one card. */
  readonly at: (card: BoxCard, step: CardStep) => readonly Tip[];
  /** Nothing in this box is like what they are about; shown at the end, so that none is lost. */
  readonly kept: readonly Tip[];
}

interface Place {
  readonly card: BoxCard;
  readonly step: CardStep;
}

/** Every tip at the step that does what it is about, by the panels' names or else by what those panels are. */
export function placeTips(tips: readonly Tip[], cards: readonly BoxCard[]): TipPlaces {
  const places = cards.flatMap((card) => card.steps.map((step): Place => ({ card, step })));
  const subjects = new Map<Place, StepSubject>();
  const subjectAt = (place: Place): StepSubject => {
    const subject = subjects.get(place) ?? subjectOf(place.card, place.step);
    subjects.set(place, subject);
    return subject;
  };
  const placed = tips.map((tip) => ({
    tip,
    place: tip.about
      ? placeOf(tip.about, tip.step, places, subjectAt)
      : places.find(({ step }) => step.id === tip.step),
  }));
  return {
    before: tips.filter(({ step }) => step === null),
    at: (card, step) =>
      placed.flatMap(({ tip, place }) => (place?.card === card && place.step === step ? [tip] : [])),
    kept: placed.flatMap(({ tip, place }) => (tip.step !== null && place === undefined ? [tip] : [])),
  };
}

/** The step that shares most; of those alike the one in the same piece, with least besides, and with the same number. */
function placeOf(
  { piece, acts, like }: StepSubject,
  stepId: string | null,
  places: readonly Place[],
  subjectAt: (place: Place) => StepSubject,
): Place | undefined {
  const best = (of: 'acts' | 'like', wanted: readonly string[]): Place | undefined => {
    const ranked = places.flatMap((place) => {
      const subject = subjectAt(place);
      const shared = subject[of].filter((act) => wanted.includes(act)).length;
      const rank = [
        shared,
        Number(subject.piece === piece),
        0 - subject[of].length,
        Number(place.step.id === stepId),
      ];
      return shared === 0 ? [] : [{ place, rank }];
    });
    return ranked.sort((a, b) => firstOtherThanZero(b.rank.map((of, i) => of - (a.rank[i] ?? 0))))[0]?.place;
  };
  return best('acts', acts) ?? best('like', like);
}

const firstOtherThanZero = (differences: readonly number[]): number =>
  differences.find((difference) => difference !== 0) ?? 0;
