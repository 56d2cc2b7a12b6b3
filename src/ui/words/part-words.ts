import type { Finding } from '../../core/checks/finding';
import type { LineInk } from '../../core/draw/net/net-lines';
import type { RefusalCode } from '../../core/rows/refusals';
import type { LengthUnit, StrongEcho } from '../../core/units';
import type { Saving } from '../frame/save-state';
import type { Naming, Texts } from './texts';

/** Texts of the parts that any page may use. */
export interface PartWords {
  readonly field: Texts<'fractions' | 'notYet'> & {
    readonly use: Naming;
    /** No more letters fit. */
    readonly full: Naming;
    readonly tooShort: (said: string, limit: string) => string;
    readonly tooLong: (said: string, limit: string) => string;
    readonly between: (off: string, markIsLonger: boolean) => string;
    readonly heard: Readonly<Record<StrongEcho, (typed: string, said: string) => string>>;
    readonly numberBetween: (least: string, most: string) => string;
    readonly oneMore: Naming;
    readonly oneFewer: Naming;
  };
  readonly drawing: Texts<
    | 'view'
    | 'closer'
    | 'farther'
    | 'whole'
    | 'line'
    | 'fromLeft'
    | 'fromTop'
    | 'gap'
    | 'slanted'
    | 'curved'
    | 'legend'
  > & { readonly allIn: (unit: LengthUnit) => string; readonly square: (unit: LengthUnit) => string };
  readonly working: Texts<'how' | 'pressLine'>;
  readonly lines: Readonly<Record<LineInk, string>>;
  readonly findings: Texts<'title' | 'event'> & {
    readonly severity: Readonly<Record<Finding['severity'], string>>;
    readonly mends: Texts<'part-fits-across-grain'>;
    readonly mend: (size: string, value: string) => string;
  };
  readonly saving: Readonly<Record<Saving, string>>;
  readonly printing: Texts<'paper' | 'letter' | 'a4' | 'making' | 'failed' | 'table' | 'anyway'> & {
    readonly lost: Naming;
  };
  readonly refusals: Readonly<Record<RefusalCode, (found: string, expected: string) => string>>;
}
