import type { SceneColours } from '../../ui/folded/space/box-model';

const PLAIN_CARD = '#f4efe4';

export const sidesOf = (colour = PLAIN_CARD) => ({
  outside: colour,
  inside: mix(colour, '#ffffff', 0.55),
});

/** The card's own color on the outside, paler inside; lines and rulers in the ink of the page round the canvas. */
export function coloursOf(canvas: Element, colour = PLAIN_CARD): SceneColours {
  const styles = getComputedStyle(canvas);
  const token = (name: string, otherwise: string) => styles.getPropertyValue(name).trim() || otherwise;
  return {
    ...sidesOf(colour),
    edge: mix(colour, '#ffffff', 0.3),
    ink: mix(colour, '#101418', 0.75),
    paper: mix(colour, '#2f5d4c', 0.45),
    arrow: mix(colour, '#101418', 0.85),
    thing: '#c98f5a',
    rule: token('--ink', '#22262a'),
  };
}

function mix(a: string, b: string, share: number): string {
  const part = (of: string, at: number) => Number.parseInt(of.slice(at, at + 2), 16);
  const mixed = [1, 3, 5].map((at) => Math.round(part(a, at) * (1 - share) + part(b, at) * share));
  return `#${mixed.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
}
