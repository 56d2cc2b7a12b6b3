import { panelWords } from '../net/panel-words';
import type { EdgeName, Role } from '../styles/language/types';
import { withEdgeUncut } from './cuts';
import { type Edit, onPanel, type PanelDraft, type PieceDraft, refused, taken, withPiece } from './draft';
import { withLidTrait } from './lid-trait';
import { bottomFlap } from './parts/bottom-flap';
import { glueTab, withTabsClear } from './parts/glue-tab';
import { dustFlap, lid, tuck } from './parts/lid';
import { type Build, plainPart } from './parts/spot';
import { freeName } from './rename';
import { axisOf, hangsOn, hungOn, isSide, lengthOfEdge, OPPOSITE, rowOf, type Side } from './sides';

const OWN_WAY: Partial<Readonly<Record<Role, Build>>> = { glueTab, bottomFlap, lid, tuck, dustFlap };

/** Adds a panel of this role on an edge, named, sized and folded as such a panel usually is. */
export const addPanel = (piece: string, panel: string, edge: EdgeName, role: Role): Edit =>
  onPanel({ piece, panel }, (draft, parent, of) => {
    const busy = busyWith(of, panel, edge);
    if (busy !== null)
      return refused(
        'edge-taken',
        'This edge is joined to the {panel} already.',
        'Choose a free edge of the net.',
        { panel: panelWords(busy) },
      );
    const hinge = lengthOfEdge(parent, edge);
    if (hinge === null)
      return refused(
        'no-length-of-edge',
        'We can’t add a panel here: the edge is slanted or curved, or isn’t there.',
        'Choose a straight edge, or take the slope out of this panel first.',
      );
    const [made, spec] = isSide(edge)
      ? partFor(role)(draft, { piece, parent: panel, side: edge, hinge })
      : [draft, onSlant(panel, edge, hinge, role)];
    const name = freeName(nameFor(role, of, panel, edge), (each) => each in of.panels);
    const joined = withTabsClear(
      withPiece(made, piece, (each) => ({
        ...each,
        panels: { ...each.panels, [panel]: withEdgeUncut(each.panels[panel] ?? parent, edge), [name]: spec },
      })),
      piece,
    );
    const far = isSide(edge) ? edge : 'e2';
    return taken(withLidTrait(joined), { piece, panel: name, edge: far });
  });

/** What an edge is joined to: a panel on it, or the one its own panel hangs on. */
function busyWith(of: PieceDraft, panel: string, edge: EdgeName): string | null {
  const hung = hungOn(of, panel, edge);
  if (hung !== undefined) return hung;
  const hinge = hangsOn(of.panels[panel]);
  const own = hinge && (isSide(hinge.edge) && isSide(edge) ? OPPOSITE[hinge.edge] === edge : edge === 'e0');
  return own ? hinge.parent : null;
}

/** On an edge that may lie at any angle: as long as the edge, and as far out. */
const onSlant = (panel: string, edge: EdgeName, hinge: string, role: Role): PanelDraft => ({
  role,
  on: `${panel}.${edge}` as `${string}.left`,
  fold: 90,
  outline: [
    ['0 in', hinge],
    [hinge, hinge],
  ],
});

/** Walls in the order of a strip, inside up: with the front facing you, the left wall is on your left. */
const ROUND: readonly string[] = ['front', 'left', 'back', 'right'];
/** Round a floor. */
const UPRIGHT: Readonly<Record<Side, string>> = { left: 'left', right: 'right', down: 'front', up: 'back' };
const PLAIN: Partial<Readonly<Record<Role, string>>> = { glueTab: 'tab', hangTab: 'hangTab' };

const big = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** What such a panel is usually called: walls by the way they face, flaps and tabs after the panel they hang on. */
function nameFor(role: Role, piece: PieceDraft, parent: string, edge: EdgeName): string {
  const spec = piece.panels[parent];
  const side = isSide(edge) ? edge : null;
  if (role === 'wall' && side !== null) {
    if (spec?.role === 'base') return UPRIGHT[side];
    const at = ROUND.indexOf(parent);
    if (at >= 0 && axisOf(side) === 0) return ROUND[(at + (side === 'right' ? 1 : 3)) % 4] ?? 'wall';
  }
  if (role === 'bottomFlap') return `${parent}Flap`.slice(0, 32);
  if (role === 'dustFlap') return spec?.role === 'lid' && side ? `${side}Dust` : `${parent}Dust`.slice(0, 32);
  if (role === 'glueTab' && side !== null && spec?.role === 'wall' && isCorner(piece, parent, side))
    return `${parent}${big(side)}Tab`.slice(0, 32);
  return PLAIN[role] ?? role;
}

function isCorner(piece: PieceDraft, parent: string, side: Side): boolean {
  const hinge = hangsOn(piece.panels[parent]);
  return (
    hinge !== null &&
    isSide(hinge.edge) &&
    axisOf(hinge.edge) !== axisOf(side) &&
    rowOf(piece, parent).length < 3
  );
}

/** The panel of this role for an edge, with the sizes, sums and limits it needs. */
const partFor = (role: Role): Build => OWN_WAY[role] ?? plainPart(role);
