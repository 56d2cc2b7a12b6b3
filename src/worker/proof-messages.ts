import type { StyleProof } from '../core/proof';

/** A maker's style to be proven at so many sizes: the text of its file. */
export interface ProofQuestion {
  readonly text: string;
  readonly boxes: number;
}

/** How far it has got; the proof comes last. */
export type ProofAnswer = { readonly done: number; readonly of: number } | { readonly proof: StyleProof };
