import {
  type Draft,
  type Edit,
  onPanel,
  type PanelDraft,
  type PieceDraft,
  refused,
  taken,
  withPiece,
} from './draft';
import { withLidTrait } from './lid-trait';

/** A panel and all that hang on it, in the order of the tree. */
export function hangingOn(piece: PieceDraft, panel: string): ReadonlySet<string> {
  const gone = new Set([panel]);
  for (const [name, { on }] of Object.entries(piece.panels))
    if (on !== undefined && gone.has(on.split('.')[0] ?? '')) gone.add(name);
  return gone;
}

/** Takes a panel out with what hangs on it, and out of every joint, seam, step and promise. */
export const removePanel = (piece: string, panel: string): Edit =>
  onPanel({ piece, panel }, (draft, spec, of) => {
    if (spec.on === undefined)
      return refused(
        'first-panel-stays',
        'Everything hangs on the first panel, so it can’t be taken out.',
        'Take out the panels on it, or change its size.',
      );
    const gone = hangingOn(of, panel);
    const [parent = '', edge = ''] = spec.on.split('.');
    return taken(withLidTrait(withoutPanels(draft, piece, gone)), { piece, panel: parent, edge });
  });

function withoutPanels(draft: Draft, id: string, gone: ReadonlySet<string>): Draft {
  const stays = (where: string) => !gone.has(where.split('.')[0] ?? '');
  const trimmed = withPiece(draft, id, (of) => {
    const joints = of.joints.filter(({ panel, onto }) => stays(panel) && stays(onto));
    return {
      ...of,
      panels: Object.fromEntries(
        Object.entries(of.panels).flatMap(([name, spec]): [string, PanelDraft][] => {
          if (!stays(name)) return [];
          // a panel that bent with one that is gone lies flat again
          if (!('follows' in spec) || stays(spec.follows ?? '')) return [[name, spec]];
          const { follows: _, ...flat } = spec;
          return [[name, flat]];
        }),
      ),
      ...(of.creases && { creases: of.creases.filter(({ between }) => between.every(stays)) }),
      joints,
      ...(of.seams && { seams: of.seams.filter(([a, b]) => stays(a) && stays(b)) }),
      closing: closingWithout(of, stays),
      ...(of.overlaps && {
        overlaps: of.overlaps.map((group) => group.filter(stays)).filter((group) => group.length > 1),
      }),
      // a ring holds only with every leaf it has
      ...(of.rings && { rings: of.rings.filter((ring) => ring.every(stays)) }),
      shell: of.shell.filter(stays),
    };
  });
  const { addOns, ...rest } = trimmed;
  return {
    ...rest,
    promises: trimmed.promises.flatMap((promise) => {
      if (promise.claim !== 'covers' || promise.piece !== id) return [promise];
      return promise.panels.every(stays) ? [promise] : [];
    }),
    ...(addOns && {
      addOns: Object.fromEntries(
        Object.entries(addOns).map(([kind, list]) => [
          kind,
          Array.isArray(list) ? list.filter((place) => place.piece !== id || place.at.every(stays)) : list,
        ]),
      ),
    }),
  };
}

const closingWithout = (of: PieceDraft, stays: (panel: string) => boolean): PieceDraft['closing'] =>
  of.closing.flatMap((step): PieceDraft['closing'] => {
    if (step.do === 'glue') return stays(step.panel) && stays(step.onto) ? [step] : [];
    const panels = step.panels.filter(stays);
    if (panels.length === 0) return [];
    if (panels.length === step.panels.length) return [step];
    if (step.do === 'tuck') return [{ ...step, panels }];
    const { through: _, ...plain } = step;
    return [{ ...plain, panels }];
  });
