import { type ReactNode, useId, useState } from 'react';
import type { Draft } from '../../core/draft/draft';
import {
  lengthOfPull,
  limitAt,
  type Pull,
  pullAt,
  pullEdge,
  pulledForm,
  pullsOf,
  snapPull,
} from '../../core/draft/pull';
import { DIRECTIONS } from '../../core/draft/sides';
import type { NamedSide } from '../../core/net/lay-piece';
import type { At } from '../../core/plane';
import { millimetres, type Ticks, ticks, toMm } from '../../core/units';
import { PX_PER_MM } from '../../ui/drawing/ink-on-screen';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { useSay } from '../../ui/words';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { Grip, type Move } from './grip';
import { LengthPlate, plateWidth } from './length-plate';
import { usePanelNames } from './panel-names';
import type { DraftEdits } from './use-draft';

/** An edge shorter than this has its grip beside it, so that the edge can still be tapped. source: our own, CSS pixels */
const SHORT_PX = 80;
const BESIDE_PX = 26;

interface Pulled {
  readonly pull: Pull;
  readonly by: Ticks;
}

interface PullingOf {
  readonly draft: Draft;
  readonly values: Readonly<Record<string, Ticks>>;
  readonly sides: readonly NamedSide[];
  readonly edits: DraftEdits;
}

/** Grips on the edges of what is selected, the length while one is pulled, and what a pull changes. */
export function usePulling({ draft, values, sides, edits }: PullingOf) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const ruler = useRuler();
  const id = useId();
  const [alone, setAlone] = useState(false);
  const [pulled, setPulled] = useState<Pulled | null>(null);
  const { place, make } = edits;
  const one = place.edge === undefined ? null : pullAt(draft, place);
  const pulls = place.edge === undefined ? pullsOf(draft, place) : one ? [one] : [];

  const snapped = (pull: Pull, by: number) =>
    snapPull(draft, values, pull, { by, finest: ruler.finest, alone });
  const byOf = (pull: Pull, [across, up]: Move): Ticks => {
    const [x, y] = DIRECTIONS[pull.side];
    return snapped(pull, millimetres(across * x + up * y));
  };
  /** An arrow that points in or out moves the edge that way. Of the other two, up and right make the panel longer. */
  const stepOf = (pull: Pull, [across, up]: Move): Ticks => {
    const [x, y] = DIRECTIONS[pull.side];
    return snapped(pull, (across * x + up * y || across + up) * ruler.finest);
  };
  const take = (pull: Pull, by: Ticks) => {
    if (by === 0) return;
    const size = alone ? null : pull.size;
    const label =
      size === null ? words.changes.change(names.panel(pull.place.panel)) : words.changes.size(labelOf(size));
    make(label, pullEdge(pull, values, by, alone), size === null ? {} : { usual: size });
  };
  const { labelOf, lengthAfter, said } = usePullWords(draft, values, alone);
  const hands = (at: (card: At) => At): ReactNode =>
    pulls.map((pull) => {
      const side = sides.find(({ panel, edge }) => panel === pull.place.panel && edge === pull.side);
      if (side === undefined) return null;
      const isPulled = pulled?.pull.side === pull.side;
      const now = isPulled ? pulled.by : ticks(0);
      const ends = [side.a, side.b].map(({ x, y }): At => at([toMm(x), toMm(y)]));
      const [a = [0, 0], b = [0, 0]] = ends;
      const [nx, ny] = DIRECTIONS[pull.side];
      const scale = at([1, 0])[0] - at([0, 0])[0];
      const out: At = [nx * toMm(now) * scale, -ny * toMm(now) * scale];
      const moved = ends.map(([x, y]): At => [x + out[0], y + out[1]]);
      return (
        <g key={pull.side}>
          {isPulled && (
            <Ghost from={ends} to={moved} says={lengthAfter({ pull, by: now })} inward={[-nx, ny]} />
          )}
          <Grip
            at={gripAt(a, b, [nx, -ny], out)}
            along={pull.axis === 0 ? 'across' : 'up'}
            label={words.pull(names.edge(pull.place.panel, pull.side))}
            says={lengthAfter({ pull, by: now })}
            mm={toMm(lengthOfPull(pull, values))}
            describedBy={id}
            scale={scale}
            onPull={(way) => setPulled(way === null ? null : { pull, by: byOf(pull, way) })}
            onDrop={(way) => take(pull, byOf(pull, way))}
            onStep={(marks) => take(pull, stepOf(pull, marks))}
          />
        </g>
      );
    });

  const tools = (
    <div className="style-pulling">
      <p id={id} className={pulled === null ? 'caption soft' : undefined}>
        {pulled === null ? (pulls.length > 0 ? words.pullHelp : '') : said(pulled)}
      </p>
      {pulls.some(({ size }) => size !== null) && (
        <ChoiceStrip
          label={words.pullChanges}
          value={alone ? 'alone' : 'size'}
          choices={(['size', 'alone'] as const).map((each) => ({ id: each, label: words.pullWays[each] }))}
          onChange={(each) => setAlone(each === 'alone')}
        />
      )}
    </div>
  );
  return { hands, tools };
}

/** How long an edge is after a pull, and what becomes of the size it follows. */
function usePullWords(draft: Draft, values: PullingOf['values'], alone: boolean) {
  const words = useDraftingWords();
  const say = useSay();
  const ruler = useRuler();
  const labelOf = (size: string) => say(draft.symbols[size]?.label ?? size);
  const lengthAfter = ({ pull, by }: Pulled) => lengthWords(ticks(lengthOfPull(pull, values) + by), ruler);
  const said = ({ pull, by }: Pulled): string => {
    const long = lengthAfter({ pull, by });
    if (alone || pull.size === null)
      return words.pulledPanel(long, pulledForm(draft, values, pull, by, true) ?? pull.form);
    const becomes = ticks((values[pull.size] ?? 0) + by);
    const limit = limitAt(draft, pull.size, becomes);
    const size = labelOf(pull.size);
    const text = words.pulledSize(long, size, lengthWords(becomes, ruler));
    return limit === null ? text : `${text} ${words.pulledLimit[limit](size)}`;
  };
  return { labelOf, lengthAfter, said };
}

/** A quarter along the edge; of a short edge, beside it. */
function gripAt([ax, ay]: At, [bx, by]: At, [nx, ny]: At, [ox, oy]: At): At {
  const isShort = Math.hypot(bx - ax, by - ay) * PX_PER_MM < SHORT_PX;
  const [share, off] = isShort ? [1 / 2, BESIDE_PX / PX_PER_MM] : [1 / 4, 0];
  return [ax + (bx - ax) * share + nx * off + ox, ay + (by - ay) * share + ny * off + oy];
}

interface GhostProps {
  readonly from: readonly At[];
  readonly to: readonly At[];
  readonly says: string;
  readonly inward: At;
}

/** Where the edge goes, and how long the panel is then. */
function Ghost({ from, to, says, inward }: GhostProps) {
  const line = (points: readonly At[]) => `M${points.map((point) => point.join(' ')).join('L')}`;
  const [a = [0, 0], b = [0, 0]] = to;
  const wide = plateWidth(says);
  const [x, y] = [(a[0] + b[0]) / 2 + inward[0] * (wide / 2 + 2), (a[1] + b[1]) / 2 + inward[1] * 6];
  return (
    <g className="style-ghost">
      {from.map((point, end) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: an edge has two ends
        <path key={end} d={line([point, to[end] ?? point])} className="style-ghost-way" />
      ))}
      <path d={line(to)} className="style-ghost-edge" />
      <LengthPlate at={[x, y]} says={says} />
    </g>
  );
}
