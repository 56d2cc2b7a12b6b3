import { panelWords } from '../net/panel-words';
import { type Edit, NO_SUCH_PANEL, type PieceDraft, refused, taken, withPiece } from './draft';

type Seam = NonNullable<PieceDraft['seams']>[number];

/** Glues a panel onto another, or changes on which side of it it ends up. A step of closing glues it, at the end. */
export const setJoint =
  (piece: string, panel: string, onto: string, lap: 'inside' | 'outside'): Edit =>
  (draft) => {
    const of = draft.pieces?.[piece];
    if (of?.panels[panel] === undefined || of.panels[onto] === undefined) return NO_SUCH_PANEL;
    if (panel === onto)
      return refused(
        'glued-to-itself',
        'The {panel} can’t be glued to itself.',
        'Choose the panel it lies on when the box is closed.',
        { panel: panelWords(panel) },
      );
    const is = (joint: { panel: string; onto: string }) => joint.panel === panel && joint.onto === onto;
    const there = of.joints.some(is);
    return taken(
      withPiece(draft, piece, (each) => ({
        ...each,
        joints: there
          ? each.joints.map((joint) => (is(joint) ? { ...joint, lap } : joint))
          : [...each.joints, { panel, onto, lap }],
        closing: there ? each.closing : [...each.closing, { do: 'glue', panel, onto }],
      })),
    );
  };

export const removeJoint =
  (piece: string, panel: string, onto: string): Edit =>
  (draft) =>
    taken(
      withPiece(draft, piece, (each) => ({
        ...each,
        joints: each.joints.filter((joint) => joint.panel !== panel || joint.onto !== onto),
        closing: each.closing.filter(
          (step) => step.do !== 'glue' || step.panel !== panel || step.onto !== onto,
        ),
      })),
    );

const same = ([a, b]: Seam, one: string, other: string): boolean =>
  (a === one && b === other) || (a === other && b === one);

/** Says that two edges meet when the box is closed. */
export const addSeam =
  (piece: string, one: string, other: string): Edit =>
  (draft) => {
    const of = draft.pieces?.[piece];
    if (of === undefined) return NO_SUCH_PANEL;
    if (one === other)
      return refused(
        'seam-with-itself',
        'An edge can’t meet itself.',
        'Choose the edge that it meets when the box is closed.',
      );
    if (of.seams?.some((seam) => same(seam, one, other))) return taken(draft);
    return taken(
      withPiece(draft, piece, (each) => ({ ...each, seams: [...(each.seams ?? []), [one, other] as Seam] })),
    );
  };

export const removeSeam =
  (piece: string, one: string, other: string): Edit =>
  (draft) =>
    taken(
      withPiece(draft, piece, (each) => ({
        ...each,
        seams: (each.seams ?? []).filter((seam) => !same(seam, one, other)),
      })),
    );
