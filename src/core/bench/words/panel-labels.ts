import type { PieceNet } from '../../net/types';
import type { Role } from '../../styles/types';

/** Panels named for their place need a noun to be spoken of. */
const NOUNS: Partial<Readonly<Record<Role, string>>> = { wall: 'wall', endFlap: 'end flap', roof: 'roof' };

/** What each panel of a piece is called on the card: `frontLeftTab` is a front left tab, a wall called `right` the right wall. */
export function panelLabels(piece: PieceNet): ReadonlyMap<string, string> {
  const labels = new Map<string, string>();
  for (const { panel, role } of piece.faces) {
    const words = panel.replace(/(?<=.)([A-Z])/g, ' $1').toLowerCase();
    const noun = NOUNS[role];
    labels.set(panel, noun === undefined || words.endsWith(noun) ? words : `${words} ${noun}`);
  }
  return labels;
}
