import type { PieceNet } from '../../net/types';
import type { Role } from '../../styles/language/types';

/** Panels named for their place need a noun to be spoken of. */
const NOUNS: Partial<Readonly<Record<Role, string>>> = {
  wall: 'wall',
  endFlap: 'end flap',
  dustFlap: 'dust flap',
  roof: 'roof',
};

/** What each panel of a piece is called on the card: `frontLeftTab` is a front left tab, a wall called `right` the right wall. */
export function panelLabels(piece: PieceNet): ReadonlyMap<string, string> {
  const labels = new Map<string, string>();
  for (const { panel, role } of piece.faces) {
    const words = panel.replace(/(?<=.)([A-Z])/g, ' $1').toLowerCase();
    const noun = NOUNS[role];
    labels.set(panel, noun === undefined ? words : withNoun(words, noun));
  }
  return labels;
}

/** `left dust` and `dust flap` make `left dust flap`. */
function withNoun(words: string, noun: string): string {
  const parts = noun.split(' ');
  const said = parts.findLastIndex((_, i) => words.endsWith(parts.slice(0, i + 1).join(' '))) + 1;
  return [words, ...parts.slice(said)].join(' ');
}
