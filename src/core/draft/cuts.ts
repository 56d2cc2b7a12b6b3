import { cutFault, cutsOf, edgesOf, touchedBy } from '../styles/language/cut-edges';
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
import { isFlatRectangle } from './sides';

export type CornerCut = 'round' | 'slant';
export type EdgeCurve = 'arch' | 'scoop';
type Kind = CutSpec['cut'];

/** source: our own, a size that scissors round with ease */
const USUAL: Len = '1/4 in';

const isCorner = (cut: Kind): cut is CornerCut => cut === 'round' || cut === 'slant';

/** The corner where an edge begins, or the edge itself, as it is cut now. */
export const cutAt = (panel: PanelDraft, at: string, of: 'corner' | 'edge'): CutSpec | undefined =>
  cutsOf(panel).find((each) => each.at === at && isCorner(each.cut) === (of === 'corner'));

/** The two corners of an edge: `at` names each by the edge that begins there, counter-clockwise; `beside` is the other edge at that corner. */
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

/** Is there room for this cut? No panel hangs on an edge that it touches, no seam closes there, and no other cut is in its way. */
export function canCut(of: PieceDraft, name: string, at: EdgeName, cut: Kind): boolean {
  const panel = of.panels[name];
  if (panel === undefined || !('outline' in panel || isFlatRectangle(panel))) return false;
  const now = cutAt(panel, at, isCorner(cut) ? 'corner' : 'edge');
  const square = now ? withoutCut(panel, now) : panel;
  return cutFault(of, name, withCut(square, { at, cut, size: USUAL })) === null;
}

/** Cuts the corner where an edge begins, or curves the edge, by this length or as it usually is. Null makes it square or straight again. */
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

/** The panel without the cuts at an edge, so that another panel can hang on it. */
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
