import { type ReactNode, useState } from 'react';
import type { Draft, PieceDraft, Place } from '../../core/draft/draft';
import { addSeam, removeJoint, removeSeam, setJoint } from '../../core/draft/joints';
import type { NamedSide } from '../../core/net/lay-piece';
import type { PieceNet } from '../../core/net/types';
import type { At } from '../../core/plane';
import { toMm } from '../../core/units';
import { Button } from '../../ui/fields/button';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { SelectField } from '../../ui/fields/text-field';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { PairBadges } from './pair-badges';
import { usePanelNames } from './panel-names';
import type { DraftEdits } from './use-draft';

/** What a tap on the net does: selects, glues two panels, or joins two edges. */
export type Tap = 'select' | 'glue' | 'meet';
const TAPS = ['select', 'glue', 'meet'] as const satisfies readonly Tap[];

/** Two panels that are glued, or two edges that meet. */
interface Pair {
  readonly key: string;
  readonly ends: readonly [string, string];
  readonly text: string;
  readonly lap?: 'inside' | 'outside';
}

interface TappingOf {
  readonly draft: Draft;
  readonly piece: PieceNet;
  readonly sides: readonly NamedSide[];
  readonly edits: DraftEdits;
}

type PanelNames = ReturnType<typeof usePanelNames>;
type DraftingWords = ReturnType<typeof useDraftingWords>;

const keyOf = (one: string, other: string): string => [one, other].sort().join(' ');

/** Joints and seams made by tapping what meets what, drawn on the net while they are. */
export function useTapping({ draft, piece, sides, edits }: TappingOf) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const [tap, setTap] = useState<Tap>('select');
  const [first, setFirst] = useState<string | null>(null);
  const [picked, setPicked] = useState<string | null>(null);
  const { make, select } = edits;

  const pairs = usePairs(draft.pieces?.[piece.id], tap);
  const chosen = pairs.find(({ key }) => key === picked);

  /** The first tap takes one end of a pair, the second the other. The same end twice lets it go. */
  const onTap = (place: Place): void => {
    const end = tap === 'meet' ? `${place.panel}.${place.edge}` : place.panel;
    if (tap === 'meet' && place.edge === undefined) return;
    select(tap === 'meet' ? place : { piece: place.piece, panel: place.panel });
    if (first === null || first === end) {
      setFirst(first === null ? end : null);
      setPicked(null);
      return;
    }
    setFirst(null);
    const key = keyOf(first, end);
    const isThere = pairs.some((pair) => pair.key === key);
    const join = tap === 'meet' ? addSeam(piece.id, first, end) : setJoint(piece.id, first, end, 'inside');
    if (!isThere && make(words.changes.joint, join).length > 0) return;
    setPicked(key);
  };

  const hands = (at: (card: At) => At): ReactNode => (
    <PairBadges
      pairs={pairs.map(({ key, ends, text }) => ({
        key,
        text,
        ends: endsOf(ends, piece, sides).map(at),
      }))}
      picked={picked}
      onPick={(key) => {
        setFirst(null);
        setPicked(key);
      }}
    />
  );
  const tools = (
    <div className="style-tapping">
      <ChoiceStrip
        named
        label={words.tapDoes}
        value={tap}
        choices={TAPS.map((each) => ({ id: each, label: words.taps[each] }))}
        onChange={(each) => {
          setTap(each);
          setFirst(null);
          setPicked(null);
        }}
      />
      <p
        role={tap === 'select' ? undefined : 'status'}
        className={tap === 'select' ? 'caption soft' : undefined}
      >
        {askOf(tap, first, words, names)}
      </p>
      {chosen && (
        <PickedPair
          pair={chosen}
          onLap={(lap) => make(words.changes.joint, setJoint(piece.id, ...chosen.ends, lap))}
          onRemove={() => {
            setPicked(null);
            const remove = tap === 'meet' ? removeSeam : removeJoint;
            make(words.changes.joint, remove(piece.id, ...chosen.ends));
          }}
        />
      )}
    </div>
  );
  return { tap, onTap, hands, tools };
}

/** What is to be tapped next. */
function askOf(tap: Tap, first: string | null, words: DraftingWords, names: PanelNames): string {
  if (tap === 'select') return words.netHelp;
  const { one, other } = words.tapAsks[tap];
  return first === null ? one : other(tap === 'meet' ? edgeSaid(names, first) : names.panel(first));
}

const edgeSaid = (names: PanelNames, where: string): string => {
  const [panel = '', edge = ''] = where.split('.');
  return names.edge(panel, edge);
};

/** The joints of a piece while gluing, its seams while joining edges, each with its words. */
function usePairs(of: PieceDraft | undefined, tap: Tap): readonly Pair[] {
  const words = useDraftingWords();
  const names = usePanelNames();
  if (of === undefined || tap === 'select') return [];
  if (tap === 'glue')
    return of.joints.map(({ panel, onto, lap }) => ({
      key: keyOf(panel, onto),
      ends: [panel, onto],
      text: words.gluedOnto(names.panel(panel), names.panel(onto)),
      lap,
    }));
  return (of.seams ?? []).map(([one, other]) => ({
    key: keyOf(one, other),
    ends: [one, other],
    text: words.edgesMeet(edgeSaid(names, one), edgeSaid(names, other)),
  }));
}

/** The smallest upright rectangle round a panel, or round an edge as `panel.edge`; in millimeters of card. */
function boundsOf(end: string, piece: PieceNet, sides: readonly NamedSide[]) {
  const [panel = '', side] = end.split('.');
  const points =
    side === undefined
      ? (piece.faces.find((face) => face.panel === panel)?.ring ?? [])
      : sides.flatMap((each) => (each.panel === panel && each.edge === side ? [each.a, each.b] : []));
  const [xs, ys] = [points.map(({ x }) => toMm(x)), points.map(({ y }) => toMm(y))];
  return points.length === 0
    ? null
    : { low: [Math.min(...xs), Math.min(...ys)], high: [Math.max(...xs), Math.max(...ys)] };
}

/** Where a pair’s two numbers go: the middle of its first end, and on its second a place toward the first, since several pairs may end there. */
function endsOf([one, other]: Pair['ends'], piece: PieceNet, sides: readonly NamedSide[]): readonly At[] {
  const [from, to] = [boundsOf(one, piece, sides), boundsOf(other, piece, sides)];
  if (from === null || to === null) return [];
  const middle = ({ low, high }: typeof from): At =>
    [0, 1].map((axis) => ((low[axis] ?? 0) + (high[axis] ?? 0)) / 2) as unknown as At;
  const start = middle(from);
  const near = middle(to).map((mid, axis) => {
    const [low = 0, high = 0] = [to.low[axis], to.high[axis]];
    return Math.max(
      low + (high - low) / 4,
      Math.min(high - (high - low) / 4, mid + ((start[axis] ?? 0) - mid) / 2),
    );
  });
  return [start, near as unknown as At];
}

interface PickedPairProps {
  readonly pair: Pair;
  readonly onLap: (lap: 'inside' | 'outside') => void;
  readonly onRemove: () => void;
}

/** The pair that was tapped: which side it is glued to, and a button that removes it. */
function PickedPair({ pair: { text, lap }, onLap, onRemove }: PickedPairProps) {
  const words = useDraftingWords();
  return (
    <div className="style-picked">
      <p>{text}</p>
      {lap && (
        <SelectField
          label={words.lap}
          value={lap}
          choices={(['inside', 'outside'] as const).map((each) => ({ id: each, label: words.laps[each] }))}
          onChange={(each) => onLap(each === 'outside' ? each : 'inside')}
        />
      )}
      <Button tone="quiet" onClick={onRemove} aria-label={words.takeOut(text)}>
        {words.remove}
      </Button>
    </div>
  );
}
