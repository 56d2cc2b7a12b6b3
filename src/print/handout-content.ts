import { type Caution, cautionsOf } from '../../shared/catalogue';
import type { Dressing, Handout, Recipe } from '../../shared/workbook';
import { type BoxCard, CAUTIONS, type CautionCode } from '../core/bench';
import { lengthWords, sizeWords } from '../core/draw/strokes/length-text';
import type { BoxNet } from '../core/net/types';
import type { BoxStyle } from '../core/styles';
import { type LengthUnit, type Ruler, USUAL_FINEST } from '../core/units';
import { type Reason, sayReason, type Wording } from '../core/units/reason';
import type { PrintStamp } from './print-document';
import { placeTips } from './tip-places';

/** A photo of the maker's, as it is saved: JPEG in base64. */
export interface HandoutPhoto {
  readonly name: string;
  readonly jpeg: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** Everything a handout is made from. */
export interface HandoutInput {
  readonly recipe: Pick<Recipe, 'name' | 'faceUp' | 'caliperUm' | 'dressings' | 'contents' | 'handout'>;
  readonly style: Pick<BoxStyle, 'name' | 'goodFor' | 'watchOut'>;
  readonly net: BoxNet;
  readonly cards: readonly BoxCard[];
  readonly ruler: Ruler;
  /** Hand work on one box, in seconds. */
  readonly seconds: number;
  /** The address that brings the recipe; null where it is too long for one, left out where there is no address. */
  readonly link?: string | null;
  readonly photos: readonly HandoutPhoto[];
  readonly stamp: PrintStamp;
  /** The reader's language; English if left out. */
  readonly say?: NonNullable<Wording['say']>;
}

/** Over tips about what the box no longer has. */
export const KEPT_HEAD = 'Kept from before';

/** What a handout says besides its steps, in words; both renderers set the same. */
export interface HandoutContent {
  readonly title: string;
  readonly about: string;
  readonly effort: string;
  readonly tools: readonly string[];
  /** What is cut, in the maker's unit and in the other. */
  readonly cuts: readonly { readonly what: string; readonly size: string; readonly otherSize: string }[];
  readonly inside: readonly { readonly name: string; readonly count: number }[];
  /** For the whole box, before its first step. */
  readonly tips: readonly string[];
  /** Tips about what this box no longer has. */
  readonly kept: readonly string[];
  readonly variations: readonly string[];
  readonly cautions: readonly string[];
  readonly credits: string;
}

/** source: our own, by the steps of the card; the maker's own word stands before it. */
const PATIENCE_STEPS = 22;
const PRACTICE_STEPS = 14;
const DIFFICULTY: Readonly<Record<NonNullable<Handout['difficulty']>, string>> = {
  'first-box': 'a good first box',
  'some-practice': 'some practice helps',
  patience: 'takes patience',
};

/** The words of a handout. */
export function handoutContent(input: HandoutInput): HandoutContent {
  const { recipe, style, net, cards, ruler, seconds, say = String } = input;
  const wording: Wording = { say, length: (length) => lengthWords(length, ruler), money: String };
  const steps = cards.flatMap((card) => card.steps);
  const usual =
    steps.length >= PATIENCE_STEPS
      ? 'patience'
      : steps.length >= PRACTICE_STEPS
        ? 'some-practice'
        : 'first-box';
  const other = otherRuler(ruler);
  const places = placeTips(recipe.handout?.tips ?? [], cards);
  const blades = new Set<CautionCode>(steps.flatMap(({ cautions }) => cautions));
  return {
    title: recipe.name,
    about: `${say(style.name)}. ${say(style.goodFor)} ${say(style.watchOut)}`,
    effort: capital(
      sayReason(
        {
          says: '{difficulty}. About {minutes} each once the cardstock is cut; the first takes longer.',
          facts: {
            difficulty: DIFFICULTY[recipe.handout?.difficulty ?? usual],
            minutes:
              seconds < 90
                ? 'a minute'
                : { says: '{count} minutes', facts: { count: { count: Math.round(seconds / 60) } } },
          },
        },
        wording,
      ),
    ),
    tools: toolsFor(input).map((tool) => sayReason(tool, wording)),
    cuts: net.pieces.map(({ label, blank }) => ({
      what: say(net.pieces.length > 1 ? label : 'Cut size'),
      size: sizeWords(blank.across, blank.up, ruler),
      otherSize: sizeWords(blank.across, blank.up, other),
    })),
    inside: recipe.contents?.items.map(({ name, count }) => ({ name, count })) ?? [],
    tips: places.before.map(({ says }) => says),
    kept: places.kept.map(({ says }) => says),
    variations: [
      say(
        'To use another paper, measure ten sheets together and divide by ten. Much thicker cardstock needs new sizes.',
      ),
      ...recipe.dressings.filter(putsOn).map(({ name }) =>
        sayReason(
          {
            says: 'Decorate it as “{name}”. The list “Decorations: {name}” says what goes on.',
            facts: { name: { text: name } },
          },
          wording,
        ),
      ),
    ],
    cautions: [
      ...[...blades].map((code) => say(CAUTIONS[code])),
      ...(recipe.contents ? cautionsOf(recipe.contents).map(({ says }: Caution) => say(says)) : []),
    ],
    credits: recipe.handout?.credits ?? '',
  };
}

const putsOn = ({ pieces, ties = [], counted = [] }: Dressing): boolean =>
  pieces.length + ties.length + counted.length > 0;

const OTHER_UNIT = { in: 'mm', mm: 'in' } as const satisfies Record<LengthUnit, LengthUnit>;
const otherRuler = ({ unit, ...ruler }: Ruler): Ruler => ({
  ...ruler,
  unit: OTHER_UNIT[unit],
  finest: USUAL_FINEST[OTHER_UNIT[unit]],
});

function toolsFor({ cards, recipe }: HandoutInput): Reason[] {
  const kinds = new Set(cards.flatMap(({ steps }) => steps.map(({ kind }) => kind)));
  const plain = (says: string): Reason => ({ says, facts: {} });
  return [
    {
      says: 'Cardstock about {thick} mm thick',
      facts: { thick: { text: (recipe.caliperUm / 1000).toFixed(2) } },
    },
    plain('A trimmer, or a knife and a ruler on a cutting mat'),
    ...(kinds.has('score') ? [plain('A scoring tool and a bone folder')] : []),
    ...(kinds.has('slit') || kinds.has('cut') ? [plain('Scissors')] : []),
    ...(kinds.has('glue') ? [plain('Double-sided tape or paper glue')] : []),
    plain('A pencil'),
  ];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
