import type { Reason } from '../units/reason';

/** Why a style file is not taken: a template with its facts, as findings are, where in the file, and what to change. */
export interface StyleRefusal extends Reason {
  readonly code: string;
  /** `pieces.box.panels.lid.size[0]`: where in the file; empty for all of it. */
  readonly path: string;
  readonly remedy: string;
}

/** Texts of a file or of the maker's own, as facts of a sentence. */
export const textFacts = (texts: Readonly<Record<string, string>>): Reason['facts'] =>
  Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, { text }]));

/** A refusal whose facts are all texts. */
export const refusalOf = (
  code: string,
  path: string,
  says: string,
  texts: Readonly<Record<string, string>>,
  remedy: string,
): StyleRefusal => ({ code, path, says, remedy, facts: textFacts(texts) });
