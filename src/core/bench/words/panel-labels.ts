import type { PieceNet } from '../../net/types';
import type { Role } from '../../styles/language/types';

/** Panels named for their place need a noun to be spoken of. */
const NOUNS: Partial<Readonly<Record<Role, string>>> = {
  wall: 'wall',
  endFlap: 'end flap',
  dustFlap: 'dust flap',
  bottomFlap: 'bottom flap',
  roof: 'roof',
  lid: 'lid',
};

/** Nouns that need no other behind them. */
const ARE_NOUNS = ['wall', 'side', 'spine', 'roof', 'flap', 'tab', 'pocket', 'cone', 'petal'];

/** Places named in the plane of the net, as hands see them on the table. */
const PLACES: Readonly<Record<string, string>> = { up: 'top', down: 'bottom' };

/**
 * What each panel of a piece is called, on every page and print: `frontLeftTab` is the front left tab, a wall called `right` the right wall,
 * `flap3` bottom flap 3.
 */
export function panelLabels(piece: PieceNet): ReadonlyMap<string, string> {
  const labels = new Map<string, string>();
  // a lid stands with its flaps up
  const nounOf = (role: Role) => (piece.lid && role === 'bottomFlap' ? 'top flap' : NOUNS[role]);
  for (const { panel, role } of piece.faces) labels.set(panel, labelOf(panel, nounOf(role)));
  return labels;
}

function labelOf(panel: string, noun: string | undefined): string {
  const [, name = panel, number] = /^(.*?)(\d+)$/.exec(panel) ?? [];
  const words = name
    .replace(/(?<=.)([A-Z])/g, ' $1')
    .toLowerCase()
    .split(' ')
    .map((word) => PLACES[word] ?? word);
  const label = noun === undefined ? words : withNoun(words, noun.split(' '));
  return [...label, ...(number === undefined ? [] : [number])].join(' ');
}

/** `left dust` and `dust flap` make `left dust flap`; `left flap` and `bottom flap` make `left bottom flap`. */
function withNoun(words: readonly string[], noun: readonly string[]): readonly string[] {
  const last = words.at(-1) ?? '';
  if (last === noun.at(-1)) {
    const kind = noun.slice(0, -1).filter((word) => !words.includes(word));
    return [...words.slice(0, -1), ...kind, last];
  }
  if (ARE_NOUNS.includes(last) && noun.length === 1) return words;
  return [...words, ...noun.filter((word) => !words.includes(word))];
}

/** What panels are called in a sentence: where a piece has no flaps but those of its bottom (or of a lid's top), they are its flaps. */
export function spokenLabels(labels: ReadonlyMap<string, string>): ReadonlyMap<string, string> {
  const isFlap = (label: string): boolean => / flap( \d+)?$/.test(label);
  for (const end of ['bottom', 'top']) {
    const shorter = [...labels].map(
      ([panel, label]) =>
        [panel, isFlap(label) ? label.replace(new RegExp(`\\b${end} flap`), 'flap') : label] as const,
    );
    const isWhole = [...labels].every(([, label]) => !isFlap(label) || label.includes(`${end} flap`));
    const isClear = new Set(shorter.map(([, label]) => label)).size === labels.size;
    if (isWhole && isClear) return new Map(shorter);
  }
  return labels;
}
