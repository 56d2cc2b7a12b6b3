import type { AddOnPlace, ClosingStep, PanelSpec, PieceSpec } from '../language/types';

const TURNED: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  Left: 'Right',
  Right: 'Left',
};

/** `frontLeftTab` is `frontRightTab` on the other side of the box. A name without a side stays. */
export const otherSide = (name: string): string =>
  name.replace(/\b(left|right)(?![a-z])|(?:Left|Right)(?![a-z])/g, (side) => TURNED[side] ?? side);

/**
 * The same places under the ids that saved boxes have: their sides were once called as seen from inside. Only for places that were declared
 * before; a new place has the id of its panel.
 */
export const underSavedIds = (places: readonly AddOnPlace[]): readonly AddOnPlace[] =>
  places.map((place) => ({ ...place, id: otherSide(place.id) }));

/** A panel's edge: the panel is on the other side, the edge lies as it did. */
const edgeOf = <Edge extends string>(edge: Edge): Edge => {
  const [panel = '', side = ''] = edge.split('.');
  return `${otherSide(panel)}.${side}` as Edge;
};
const named = <Value>(of: Readonly<Record<string, Value>>): Record<string, Value> =>
  Object.fromEntries(Object.entries(of).map(([name, value]) => [otherSide(name), value]));

/** A lid is made as a tray is and worn upside down: what lies left while it is made stands right on the box, and is called so. */
export const wornUpsideDown = (piece: PieceSpec): PieceSpec => ({
  ...piece,
  lid: true,
  panels: Object.fromEntries(
    Object.entries(piece.panels).map(([name, panel]): [string, PanelSpec] => [
      otherSide(name),
      panel.on === undefined ? panel : { ...panel, on: edgeOf(panel.on) },
    ]),
  ),
  joints: piece.joints.map((joint) => ({
    ...joint,
    panel: otherSide(joint.panel),
    onto: otherSide(joint.onto),
  })),
  ...(piece.creases && {
    creases: piece.creases.map(({ between: [one, other], ...crease }) => ({
      ...crease,
      between: [edgeOf(one), edgeOf(other)],
    })),
  }),
  ...(piece.seams && {
    seams: piece.seams.map(([one, other, ...gap]) => [edgeOf(one), edgeOf(other), ...gap] as const),
  }),
  ...(piece.overlaps && { overlaps: piece.overlaps.map((stack) => stack.map(otherSide)) }),
  closing: piece.closing.map(stepOf),
  shell: piece.shell.map(otherSide),
});

function stepOf(step: ClosingStep): ClosingStep {
  if (step.do === 'glue') return { ...step, panel: otherSide(step.panel), onto: otherSide(step.onto) };
  const panels = step.panels.map(otherSide);
  if (step.do === 'tuck' || step.through === undefined) return { ...step, panels };
  return { ...step, panels, through: step.through.map(named) };
}
