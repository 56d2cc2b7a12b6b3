import type { PieceNet } from '../../net/types';
import type { Reason } from '../../units/reason';
import { deriveProgram, type ProgramChoices } from '../program/derive-program';
import type { BenchTool } from '../types';
import { canonicalCard } from './canonical-card';
import { canonicalNet } from './canonical-form';
import { runProgram } from './virtual-bench';

/** Why no bench card can be written for a piece, and what helps: a finding of the checks' shape. */
export interface CardTrouble extends Reason {
  readonly code: 'own-net-no-card';
  readonly severity: 'stop';
  readonly where: string;
  readonly remedy: string;
}

const NET_FORMS = new WeakMap<PieceNet, string>();

/** A piece's own form, worked out once: its card is tried for several tools and faces. */
function netForm(piece: PieceNet): string {
  const known = NET_FORMS.get(piece);
  if (known !== undefined) return known;
  const form = canonicalNet(piece).join('\n');
  NET_FORMS.set(piece, form);
  return form;
}

/**
 * Derives the card of a piece and works it on the virtual bench: null when it makes exactly the piece. A style's nets are proved to; a net
 * from elsewhere may have lines the acts of a bench cannot make.
 */
export function cardTrouble(
  piece: PieceNet,
  tool: BenchTool,
  choices: ProgramChoices = {},
): CardTrouble | null {
  const { ops } = deriveProgram(piece, tool, choices);
  const run = runProgram(ops, tool);
  const trouble = (says: string, facts: CardTrouble['facts'] = {}): CardTrouble => ({
    code: 'own-net-no-card',
    severity: 'stop',
    where: piece.id,
    facts: { piece: piece.label.toLowerCase(), ...facts },
    says,
    remedy: 'Cut and score it from the template; it is still laid out and counted.',
  });
  if (!run.ok) {
    const { op, code } = run.fault;
    return trouble(
      'No bench card can be written for the {piece}: act {act} cannot be done at a bench ({why}).',
      { act: { count: op + 1 }, why: code.replaceAll('-', ' ') },
    );
  }
  return canonicalCard(run.card).join('\n') === netForm(piece)
    ? null
    : trouble(
        'No bench card can be written for the {piece}: worked act by act, its lines do not come out as they are drawn.',
      );
}
