import { cutsOf, edgesOf, hingeOf, touchedBy } from '../styles/language/cut-edges';
import type { CutSpec, EdgeName, Len } from '../styles/language/types';
import { formFault } from './change-panel';
import {
  type Edit,
  onPanel,
  type PanelDraft,
  type PieceDraft,
  type Place,
  refused,
  taken,
  withPanel,
} from './draft';

export type CornerCut = 'round' | 'slant';
export type EdgeCurve = 'arch' | 'scoop';
type Kind = CutSpec['cut'];

/** source: our own, a size that scissors round with ease */
const USUAL: Len = '1/4 in';

const isCorner = (cut: Kind): cut is CornerCut => cut === 'round' || cut === 'slant';

/** The corner where an edge begins, or the edge itself, as it is cut now. */
export const cutAt = (panel: PanelDraft, at: string, of: 'corner' | 'edge'): CutSpec | undefined =>
  cutsOf(panel).find((each) => each.at === at && isCorner(each.cut) === (of === 'corner'));

/** The two corners of an edge, each by the edge that begins there, counter-clockwise, and the other edge that ends or begins at it. */
export function cornersOfEdge(
  panel: PanelDraft,
  edge: string,
): readonly { readonly at: EdgeName; readonly beside: string }[] {
  const names = edgesOf(panel);
  const at = names.indexOf(edge);
  const after = names[(at + 1) % names.length];
  if (at < 0 || after === undefined) return [];
  return [
    { at: edge as EdgeName, beside: names.at(at - 1) ?? edge },
    { at: after as EdgeName, beside: after },
  ];
}

/** May this be cut so? Card runs on over no edge that it touches, no seam closes there, and no other cut lies in its way. */
export function canCut(of: PieceDraft, name: string, at: string, cut: Kind): boolean {
  const panel = of.panels[name];
  if (panel === undefined || !isFlat(panel)) return false;
  const { edges, corners } = touchedBy(panel, { at: at as EdgeName, cut });
  const busy = new Set<string>([
    ...Object.values(of.panels).flatMap(({ on }) => on ?? []),
    ...(of.seams ?? []).flatMap((seam) => seam.slice(0, 2)),
    ...(of.creases ?? []).flatMap(({ between }) => between),
  ]);
  const others = cutsOf(panel).filter((each) => each.at !== at || isCorner(each.cut) !== isCorner(cut));
  const met = new Set(others.flatMap((each) => touchedBy(panel, each).corners));
  const isNotched = 'notches' in panel && panel.notches.some(({ edge }) => edge === at);
  return (
    edges.length > 0 &&
    edges.every((edge) => edge !== hingeOf(panel) && !busy.has(`${name}.${edge}`)) &&
    corners.every((corner) => !met.has(corner)) &&
    (isCorner(cut) || !isNotched)
  );
}

const isFlat = (panel: PanelDraft): boolean =>
  'outline' in panel || ('size' in panel && panel.bow === undefined && panel.follows === undefined);

/** Rounds or slants the corner where an edge begins, or curves the edge: as usual, or by this length; null makes it square and straight again. */
export const setCut = (
  place: Place,
  at: EdgeName,
  cut: Kind | null,
  of: 'corner' | 'edge',
  text?: string,
): Edit =>
  onPanel(place, (draft, panel, piece) => {
    const now = cutAt(panel, at, of);
    if (cut === null)
      return now ? taken(withPanel(draft, place, (each) => withoutCut(each, now))) : taken(draft);
    if (!canCut(piece, place.panel, at, cut))
      return of === 'corner'
        ? refused(
            'no-room-for-corner',
            'This corner has to stay square: a panel hangs on one of its edges, a seam closes there, or that edge is curved.',
            'Choose a corner between two free edges.',
          )
        : refused(
            'no-room-for-curve',
            'This edge has to stay straight: a panel hangs on it or beside it, a seam closes there, or it has a notch or a cut corner.',
            cut === 'arch' ? 'Scoop it, or choose an edge between two free edges.' : 'Choose a free edge.',
          );
    const size = (text ?? now?.size ?? USUAL).trim();
    return (
      formFault(draft, size) ??
      taken(withPanel(draft, place, (each) => withCut(now ? withoutCut(each, now) : each, { at, cut, size })))
    );
  });

const withCut = (panel: PanelDraft, cut: CutSpec): PanelDraft => ({
  ...panel,
  cuts: [...cutsOf(panel), cut],
});

function withoutCut(panel: PanelDraft, gone: CutSpec): PanelDraft {
  const { cuts, ...rest } = panel as Extract<PanelDraft, { readonly cuts?: unknown }>;
  const left = (cuts ?? []).filter((each) => each.at !== gone.at || each.cut !== gone.cut);
  return left.length === 0 ? rest : { ...rest, cuts: left };
}

/** The panel with the edge square and straight again, for a panel that is to hang on it. */
export const withEdgeUncut = (panel: PanelDraft, edge: string): PanelDraft =>
  cutsOf(panel)
    .filter((cut) => touchedBy(panel, cut).edges.includes(edge))
    .reduce(withoutCut, panel);

/** Does a cut shorten or bend this edge, so that no seam can close at it? */
export function isCutEdge(piece: PieceDraft, where: string): boolean {
  const [name = '', edge = ''] = where.split('.');
  const panel = piece.panels[name];
  return panel !== undefined && cutsOf(panel).some((cut) => touchedBy(panel, cut).edges.includes(edge));
}
