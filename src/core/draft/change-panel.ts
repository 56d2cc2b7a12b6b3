import type { Len, Role } from '../styles/language/types';
import {
  type Draft,
  type Edit,
  type Edited,
  NO_SUCH_PANEL,
  type Place,
  panelOf,
  refused,
  taken,
  withPanel,
} from './draft';
import { namesIn, readable } from './forms';
import { lengthNames } from './lengths';
import { withLidTrait } from './lid-trait';
import { hangsOn, isRectangle } from './sides';

/** What is wrong with a form as it was typed; null where nothing is. */
export function formFault(draft: Draft, text: string): Extract<Edited, { ok: false }> | null {
  const told = (edited: Edited) => edited as Extract<Edited, { ok: false }>;
  if (readable(text) === null || !/^(?!.*\d{7})[a-zA-Z0-9 ./+-]{1,120}$/.test(text))
    return told(
      refused(
        'form-unread',
        'We couldn’t read {text} as a length.',
        'Write a length with its unit, or names of sizes with + and -, such as width + 1/8 in.',
        { text: text === '' ? '“”' : text },
      ),
    );
  const known = new Set(lengthNames(draft));
  const unknown = [...namesIn(text)].find((name) => name !== 'in' && name !== 'mm' && !known.has(name));
  return unknown === undefined
    ? null
    : told(
        refused('form-name', 'No size here is called {name}.', 'Use one of these: {known}.', {
          name: unknown,
          known: [...known].join(', '),
        }),
      );
}

/** Sets one size of a rectangle, across or up as the net lies, to a length or a form. */
export const setPanelSize =
  (place: Place, axis: 0 | 1, text: string): Edit =>
  (draft) => {
    const panel = panelOf(draft, place);
    if (panel === undefined) return NO_SUCH_PANEL;
    const fault = formFault(draft, text);
    if (fault) return fault;
    if (!isRectangle(panel))
      return refused(
        'no-rectangle',
        'This panel is no rectangle, so it has no size across and up.',
        'Change its corners in the style file.',
      );
    const size: [Len, Len] = axis === 0 ? [text.trim(), panel.size[1]] : [panel.size[0], text.trim()];
    return taken(withPanel(draft, place, (each) => ({ ...each, size })));
  };

/** Where along its parent’s edge a panel begins; empty for the edge’s own start. */
export const setPanelStart =
  (place: Place, text: string): Edit =>
  (draft) => {
    const panel = panelOf(draft, place);
    if (panel === undefined) return NO_SUCH_PANEL;
    if (text.trim() === '') {
      const { at: _, ...rest } = panel;
      return taken(withPanel(draft, place, () => rest));
    }
    return formFault(draft, text) ?? taken(withPanel(draft, place, (each) => ({ ...each, at: text.trim() })));
  };

/** How far the free corners of a rectangle are drawn in; empty for square ends. */
export const setPanelTaper =
  (place: Place, text: string): Edit =>
  (draft) => {
    const panel = panelOf(draft, place);
    if (panel === undefined || !isRectangle(panel)) return NO_SUCH_PANEL;
    const { taper: _, ...rest } = panel;
    if (text.trim() === '') return taken(withPanel(draft, place, () => rest));
    return formFault(draft, text) ?? taken(withPanel(draft, place, () => ({ ...rest, taper: text.trim() })));
  };

export const setPanelRole =
  (place: Place, role: Role): Edit =>
  (draft) =>
    panelOf(draft, place) === undefined
      ? NO_SUCH_PANEL
      : taken(withLidTrait(withPanel(draft, place, (panel) => ({ ...panel, role }))));

/** How a panel meets the one it hangs on: folded by so many degrees, or the same plane carried on without a score. */
export const setPanelFold =
  (place: Place, fold: number | 'flush'): Edit =>
  (draft) => {
    const panel = panelOf(draft, place);
    if (panel === undefined || hangsOn(panel) === null) return NO_SUCH_PANEL;
    if (fold !== 'flush' && !(Math.abs(fold) <= 180))
      return refused(
        'fold-too-far',
        'A fold of {fold}° is more than card can turn.',
        'Choose from -180 to 180.',
        { fold: `${fold}` },
      );
    const { flush: _, fold: __, ...rest } = panel;
    const joined = fold === 'flush' ? { ...rest, flush: true as const } : { ...rest, fold };
    return taken(withPanel(draft, place, () => joined));
  };
