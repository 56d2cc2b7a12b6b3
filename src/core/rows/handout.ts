import { z } from 'zod';
import { id, name, note, row, whole, words } from './fields';

/** What a maker adds to a recipe to teach it: their tips, whom to thank, which pictures go with it. */
export const handout = z.strictObject({
  /**
   * A tip stands under the step that does what it is `about`, or at the head when it is for the whole box (`step` is null). `step` is
   * that step's id in the style it was written for: all that older files say.
   */
  tips: z
    .array(
      z.strictObject({
        id,
        step: words.nullable(),
        about: z
          .strictObject({ piece: words, acts: z.array(words).max(200), like: z.array(words).max(200) })
          .optional(),
        says: note,
      }),
    )
    .max(100),
  credits: note,
  /** As they see it; left out, it is worked out from the card. */
  difficulty: z.enum(['first-box', 'some-practice', 'patience']).optional(),
});

/**
 * A picture the maker took of a recipe's box: a JPEG already made small, with nothing in it but the picture (no place, no camera). It is a
 * row of its own so that a keystroke in the recipe never carries it along.
 */
export const photo = z.strictObject({
  ...row,
  name,
  recipeId: id,
  widthPx: whole(1, 2000),
  heightPx: whole(1, 2000),
  /** Base64, so that a file stays readable JSON. */
  jpeg: z.base64().max(700_000),
});

export type Handout = z.infer<typeof handout>;
export type Photo = z.infer<typeof photo>;
