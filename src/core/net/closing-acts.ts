import type { Angle, PieceSpec } from '../styles/language/types';
import type { ClosingAct, Face, Hinge, Joint } from './types';

/** A piece's closing steps with panels turned into hinges and angles into degrees. `to` turns the scores only: a panel laid flat does not bend. */
export function closingActs(
  spec: PieceSpec,
  faces: readonly Face[],
  hinges: readonly Hinge[],
  joints: readonly Joint[],
  degreesOf: (angle: Angle) => number,
): ClosingAct[] {
  return spec.closing.flatMap((step): ClosingAct[] => {
    const tip = step.tip ?? null;
    if (step.do === 'glue') {
      const joint = joints.findIndex(
        ({ tab, target }) => faces[tab]?.panel === step.panel && faces[target]?.panel === step.onto,
      );
      return joint < 0 ? [] : [{ do: 'glue', joint, tip }];
    }
    const to = step.do === 'fold' && step.to !== undefined ? degreesOf(step.to) : null;
    const turning = [...hinges.entries()].filter(
      ([, hinge]) => step.panels.includes(hinge.panel) && (to === null || hinge.kind === 'score'),
    );
    const through = step.do === 'fold' ? step.through : undefined;
    return [
      {
        do: step.do,
        hinges: turning.map(([at]) => at),
        toDeg: turning.map(([, { restDeg }]) => to ?? restDeg),
        ...(through === undefined
          ? {}
          : {
              through: through.map((stop) =>
                turning.map(([, { panel, restDeg }]) => degreesOf(stop[panel] ?? to ?? restDeg)),
              ),
            }),
        panels: step.panels,
        bends: step.bends ?? false,
        tip,
      },
    ];
  });
}
