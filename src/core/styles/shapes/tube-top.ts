import type {
  Chosen,
  ClosingStep,
  ConstraintSpec,
  FitSpec,
  Len,
  OptionSpec,
  PanelSpec,
  Quantity,
} from '../language/types';
import type { Tube } from './glued-tube';
import {
  BACK_SEAM_TUCK_FITS,
  TUCK_FITS,
  TUCK_LIMITS,
  TUCK_OPTIONS,
  TUCK_QUANTITIES,
  TUCK_SYMBOLS,
  tuckClosing,
  tuckLid,
  tuckOverlap,
} from './tuck-lid';

/** With a lid on the back panel, or open: what a box with a bottom of its own leaves to choose. */
export const TOP_OPTION = {
  top: {
    label: 'Top',
    help: 'A lid with a tuck on the back panel, or an open rim.',
    choices: [
      { id: 'lid', label: 'Closing lid' },
      { id: 'open', label: 'Open' },
    ],
  },
  ...TUCK_OPTIONS,
} as const satisfies Record<string, OptionSpec>;

const given: readonly Chosen[] = [{ top: 'lid' }];

export const TOP_SYMBOLS = {
  tuck: { ...TUCK_SYMBOLS.tuck, given },
  relief: { ...TUCK_SYMBOLS.relief, given },
} as const;

export const TOP_QUANTITIES = {
  ...TUCK_QUANTITIES,
  tuckTakes: {
    means: 'depth that the tuck takes inside the far wall',
    of: ({ lidShort = 0 }, chosen) => (chosen['top'] === 'open' ? 0 : lidShort),
    formula: 'top == "open" ? 0 : lidShort',
  },
  lidTakes: {
    means: 'height that the layers of the lid take',
    of: ({ t = 0 }, chosen) => (chosen['top'] === 'open' ? 0 : 2 * t),
    formula: 'top == "open" ? 0 : 2 * t',
  },
} as const satisfies Record<string, Quantity>;

export const TOP_LIMITS: readonly ConstraintSpec[] = TUCK_LIMITS.map((limit: ConstraintSpec) => ({
  ...limit,
  given: limit.given?.map((way) => ({ ...way, top: 'lid' })) ?? given,
}));

/** The fits of a lid, where there is one. */
const withLid = (fits: readonly FitSpec[]): readonly FitSpec[] =>
  fits.map((fit) => ({ ...fit, given: fit.given?.map((way) => ({ ...way, top: 'lid' })) ?? given }));

export const TOP_FITS = withLid(TUCK_FITS);
export const BACK_SEAM_TOP_FITS = withLid(BACK_SEAM_TUCK_FITS);

interface Top {
  /** How far the glue tab is kept clear of the rim. */
  readonly clear: Len;
  readonly panels: (tube: Tube) => Readonly<Record<string, PanelSpec>>;
  readonly overlaps: readonly (readonly string[])[];
  readonly closing: readonly ClosingStep[];
}

/** The upper end of a tube as chosen. */
export const topOf = (chosen: Chosen): Top =>
  chosen['top'] === 'open'
    ? { clear: '0', panels: () => ({}), overlaps: [], closing: [] }
    : {
        clear: 'tabClear',
        panels: (tube) => tuckLid(chosen, tube, 'back', 'up', 'top'),
        overlaps: [tuckOverlap('top')],
        closing: tuckClosing('top'),
      };
