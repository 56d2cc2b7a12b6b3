import type { Rows, TableName } from '../../../shared/tables';
import { type LengthUnit, toMm, USUAL_FINEST } from '../../core/units';

type WithoutStamp<Row> = Row extends unknown ? Omit<Row, 'id' | 'rev' | 'createdAt' | 'changedAt'> : never;

/** A row without what the store adds by itself: its id, its revision, its times. */
export type Content<T extends TableName> = WithoutStamp<Rows[T]>;

/** Light cardstock: what most makers have. source: common practice, no source. */
const CARDSTOCK_UM = 300;

/** A recipe as it starts: the style's own sizes where none are given (`firstSizesMm`), marks of the maker's unit, nothing on it yet. */
export const firstRecipe = (
  given: Pick<Content<'recipes'>, 'name' | 'styleId'> & Partial<Content<'recipes'>>,
  unit: LengthUnit,
): Content<'recipes'> => ({
  options: {},
  caliperUm: CARDSTOCK_UM,
  paperId: null,
  faceUp: 'outside',
  grain: 'upright',
  dressings: [],
  notes: '',
  ...(unit === 'mm' ? { markMm: toMm(USUAL_FINEST.mm) } : {}),
  sizesMm: {},
  ...given,
});

/** Spares as they start, one favor in ten. source: reference figures of the trade differ; our own default, the maker's to change. */
const FIRST_SPARES = { percent: 10, atLeast: 0 };

export const firstEvent = (
  given: Pick<Content<'events'>, 'name' | 'currency'> & Partial<Content<'events'>>,
): Content<'events'> => ({
  date: null,
  lines: [],
  spares: FIRST_SPARES,
  tapeId: null,
  notes: '',
  ...given,
});
