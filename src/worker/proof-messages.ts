import type { StyleProof } from '../core/proof';
import type { StyleRefusal } from '../core/style-file/style-refusal';

/** A maker's style to be proven at so many sizes: the text of its file. */
export interface ProofQuestion {
  readonly text: string;
  readonly boxes: number;
}

/** What the proof found, and what the style leaves loose though it may fold well. */
export interface Proven {
  readonly proof: StyleProof;
  readonly loose: readonly StyleRefusal[];
}

/** How far it has got; the proof comes last. */
export type ProofAnswer = { readonly done: number; readonly of: number } | Proven;
