import type { Reason } from '../units/reason';

/** Why a style file is not taken: a template with its facts, as findings are, where in the file, and what to change. */
export interface StyleRefusal extends Reason {
  readonly code: string;
  /** `pieces.box.panels.lid.size[0]`: where in the file; empty for all of it. */
  readonly path: string;
  readonly remedy: string;
}
