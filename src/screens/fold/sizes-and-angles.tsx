import { outsideOf } from '../../core/draw/step/outside-at-most';
import { anglesDuring, closingStates } from '../../core/fold';
import type { Extent } from '../../core/fold/solid-figure';
import type { BoxNet, PieceNet } from '../../core/net';
import { roundToTick, TICKS_PER_MM, type Ticks } from '../../core/units';
import { Length } from '../../ui/fields/measure';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';

const SIDES = ['width', 'depth', 'height'] as const;

/** Inside and outside of the closed box, side by side. */
export function SizesOfBox({ net, outside }: { net: BoxNet; outside: Extent }) {
  const words = usePageWords().fold;
  const sides = outsideOf(net, outside);
  return (
    <table className="fold-sizes">
      <caption>{words.sizes}</caption>
      <thead>
        <tr>
          <td />
          <th scope="col">{words.inside}</th>
          <th scope="col">{words.outside}</th>
        </tr>
      </thead>
      <tbody>
        {SIDES.map((side, at) => (
          <tr key={side}>
            <th scope="row">{words[side]}</th>
            <td>
              <Length of={net.inside[side]} />
            </td>
            <td>
              <Length of={sides[at] ?? net.inside[side]} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export const ticksOf = (mm: number): Ticks => roundToTick(mm * TICKS_PER_MM);

interface AngleTableProps {
  readonly piece: PieceNet;
  readonly done: number;
  readonly nameOf: (panel: string) => string;
}

/** What the picture shows, as numbers: by how much every panel is turned against the one it hangs on. */
export function AngleTable({ piece, done, nameOf }: AngleTableProps) {
  const words = usePageWords().fold;
  const acts = piece.closing.length;
  const act = Math.min(Math.floor(done), Math.max(0, acts - 1));
  const angles = anglesDuring(closingStates(piece), act, done - act, piece.closing);
  const rows = piece.hinges.flatMap(({ panel, kind }, at) =>
    kind === 'score' ? [{ panel, degrees: Math.round(angles[at] ?? 0) }] : [],
  );
  return (
    <Opening head={words.angles}>
      <table className="fold-angles">
        <thead>
          <tr>
            <th scope="col">{words.panel}</th>
            <th scope="col">{words.angle}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ panel, degrees }, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: hinges have no other name, and their order is the net's
            <tr key={at}>
              <th scope="row">{nameOf(panel)}</th>
              <td>{words.degrees(degrees)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Opening>
  );
}
