import type { Allergen } from './guests';

/** What a guest's own words ask to be kept away from. source: from memory; a word that stands for several foods names all of them */
const ASKED: readonly (readonly [RegExp, readonly Allergen[]])[] = [
  [/\bpea-?nuts?\b/i, ['peanuts']],
  [/\b(tree|wal|hazel)-?\s?nuts?\b|\b(almonds?|cashews?|pecans?|pistachios?)\b/i, ['tree nuts']],
  [/\bnuts?\b|\bnut-(free|allerg\w*)/i, ['tree nuts', 'peanuts']],
  [/\b(milk|dairy|lactose|butter|cream)\b/i, ['milk']],
  [/\beggs?\b/i, ['eggs']],
  [/\bshell-?fish|\bcrustaceans?|\b(shrimps?|prawns?|crabs?)\b/i, ['shellfish']],
  [/\bfish\b/i, ['fish']],
  [/\bsea-?food\b/i, ['fish', 'shellfish']],
  [/\bgluten|\bwheat\b|\bco?eliac/i, ['wheat']],
  [/\bsoy|\bsoya\b/i, ['soybeans']],
  [/\bsesame|\btahini/i, ['sesame']],
  [/\bvegan/i, ['milk', 'eggs', 'fish', 'shellfish']],
];

/** What is usual in a food of this name. source: usual recipes, from memory; only its own label says what is in it */
const USUAL: readonly (readonly [RegExp, readonly Allergen[]])[] = [
  [/\bpea-?nuts?\b/i, ['peanuts']],
  [
    /\b(almonds?|hazelnuts?|walnuts?|pecans?|pistachios?|cashews?|macadamias?|pralines?|marzipan|nougat)\b/i,
    ['tree nuts'],
  ],
  [/\b(mixed |roasted |candied |salted )?nuts?\b/i, ['tree nuts', 'peanuts']],
  [/\b(chocolates?|truffles?)\b/i, ['milk', 'soybeans']],
  [/\b(caramels?|toffees?|fudge|butter|butterscotch|cream|creams|cheese|milk)\b/i, ['milk']],
  [/\b(cookies?|biscuits?|cakes?|cupcakes?|brownies?|macaroons?|shortbreads?)\b/i, ['wheat', 'eggs', 'milk']],
  [/\b(pretzels?|crackers?|bread|waffles?)\b/i, ['wheat']],
  [/\bmacarons?\b/i, ['tree nuts', 'eggs']],
  [/\bmarshmallow treats?\b|\bmeringues?\b/i, ['eggs']],
  [/\b(sesame|halva|tahini)\b/i, ['sesame']],
];

const found = (
  table: readonly (readonly [RegExp, readonly Allergen[]])[],
  text: string,
): readonly Allergen[] => [
  ...new Set(table.flatMap(([pattern, allergens]) => (pattern.test(text) ? allergens : []))),
];

/** The foods a guest's words ask to leave out; none where the words are about something else. */
export const allergensAsked = (needs: string): readonly Allergen[] => found(ASKED, needs);

/** The foods that a thing of this name usually holds. Never a proof that it holds no others. */
export const allergensUsual = (name: string): readonly Allergen[] => found(USUAL, name);
