import type { FavorEvent, Lesson } from '../../rows';

/** A class before anyone changes it. source: common practice, no source; learners who do a thing for the first time are taken to need three times as long */
export const USUAL_LESSON: Lesson = {
  ahead: ['cut'],
  samples: 1,
  demonstrations: 1,
  learnerPercent: 300,
  startMinute: 840,
  welcomeMinutes: 10,
  breakMinutes: 0,
  tidyMinutes: 10,
  roomMinor: 0,
};

/** How this class runs; nothing is made to be shown where nothing was said of it. */
export const lessonOf = ({ lesson }: Pick<FavorEvent, 'lesson'>): Lesson =>
  lesson ?? { ...USUAL_LESSON, samples: 0, demonstrations: 0 };
