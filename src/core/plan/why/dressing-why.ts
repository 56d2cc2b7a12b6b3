import {
  bowLength,
  type FlatSize,
  girthOf,
  insertEase,
  type Outside,
  outsideSize,
  panelSize,
  revealsOf,
  windowSize,
  wrapLength,
} from '../../dress';
import { caliperTicks } from '../../net/name-values';
import type { BoxNet } from '../../net/types';
import type { DressingPiece, Tie } from '../../rows';
import { ticksOfMm } from '../../rows/lengths';
import { type Ticks, ticks } from '../../units';
import { type Reason, reason } from '../../units/reason';

const length = (of: Ticks) => ({ length: of });

/** Where the cut size of a dressing piece comes from, as arithmetic; rounding to the maker's marks is the last step. */
export function whyPiece(net: BoxNet, { fit }: DressingPiece, size: FlatSize): readonly Reason[] {
  const made = { across: length(size.across), up: length(size.up) };
  switch (fit?.rule) {
    case undefined:
      return [reason('Your size: {across} × {up}.', made)];
    case 'on-panel':
      return whyOnPanel(net, fit, made);
    case 'around':
      return whyAround(net, fit, made);
    case 'behind': {
      const { width, height } = net.inside;
      return [
        reason('Across: {room} inside − {ease} to slide in, cut {across}.', {
          ...made,
          room: length(width),
          ease: length(ticksOfMm(fit.easeMm)),
        }),
        reason('Up: {room} inside + {above} above the rim, cut {up}.', {
          ...made,
          room: length(height),
          above: length(ticksOfMm(fit.aboveRimMm)),
        }),
      ];
    }
    case 'over-window': {
      const opening = windowSize(net, fit.panel, fit.part);
      if (!opening) return [];
      const lap = length(ticksOfMm(fit.lapMm));
      return [
        reason('Across: {opening} of opening + 2 × {lap}, cut {across}.', {
          ...made,
          lap,
          opening: length(opening.across),
        }),
        reason('Up: {opening} of opening + 2 × {lap}, cut {up}.', {
          ...made,
          lap,
          opening: length(opening.up),
        }),
      ];
    }
    case 'divides':
      return [
        reason('Across: {room} inside − {ease} to slide in, cut {across}.', {
          ...made,
          room: length(fit.runs === 'across' ? net.inside.width : net.inside.depth),
          ease: length(insertEase(net, fit)),
        }),
        reason('{up} high, your size.', made),
      ];
    case 'on-floor':
      return [
        reason('The floor is {width} × {depth} inside, less {ease} to go in.', {
          width: length(net.inside.width),
          depth: length(net.inside.depth),
          ease: length(insertEase(net, fit)),
        }),
        fit.riseMm > 0
          ? reason('With a side of {rise} all around: cut {across} × {up}.', {
              ...made,
              rise: length(ticksOfMm(fit.riseMm)),
            })
          : reason('Cut {across} × {up}.', made),
      ];
  }
}

type Made = Readonly<Record<'across' | 'up', { readonly length: Ticks }>>;
type FitBy<Rule> = Extract<NonNullable<DressingPiece['fit']>, { readonly rule: Rule }>;

function whyOnPanel(net: BoxNet, fit: FitBy<'on-panel'>, made: Made): readonly Reason[] {
  const panel = panelSize(net, fit.panel, fit.part);
  if (!panel) return [];
  const { left, right, up, down } = revealsOf(fit);
  return [
    reason('Across: {panel} − {left} − {right} = {exact}, cut {across}.', {
      ...made,
      panel: length(panel.across),
      left: length(left),
      right: length(right),
      exact: length(ticks(panel.across - left - right)),
    }),
    reason('Up: {panel} − {above} − {below} = {exact}, cut {up}.', {
      ...made,
      panel: length(panel.up),
      above: length(up),
      below: length(down),
      exact: length(ticks(panel.up - up - down)),
    }),
  ];
}

function whyAround(net: BoxNet, fit: FitBy<'around'>, made: Made): readonly Reason[] {
  const caliper = caliperTicks(net.caliperUm);
  const lap = ticksOfMm(fit.lapMm);
  const round = girthOf(net, fit.way);
  return [
    reason(
      'Around it: {round} score to score + 4 × {caliper} thickness + {lap} overlap = {exact}, cut {across}.',
      {
        ...made,
        round: length(round),
        caliper: { text: `${net.caliperUm / 1000} mm` },
        lap: length(lap),
        exact: length(ticks(round + 4 * caliper + lap)),
      },
    ),
    reason('{up} high, your size.', made),
  ];
}

/** Where the length of a ribbon or twine comes from; `cut` is what is cut off the roll. */
export function whyTie(net: BoxNet, { wrap, bow }: Pick<Tie, 'wrap' | 'bow'>, cut: Ticks): readonly Reason[] {
  return [
    ...whyRound(outsideSize(net), wrap),
    ...(bow
      ? [
          reason('Bow: {loops} loops × 2 × {loop} + 2 tails × {tail} + {knot} for the knot = {bow}.', {
            loops: bow.loops,
            loop: length(ticksOfMm(bow.loopMm)),
            tail: length(ticksOfMm(bow.tailMm)),
            knot: length(ticksOfMm(bow.knotMm)),
            bow: length(bowLength(bow)),
          }),
        ]
      : []),
    reason('Cut {cut}, in one piece.', { cut: length(cut) }),
  ];
}

/** Round a plain box its sides are added up; over a roof or a handle, or round many sides, it is measured on the folded box. */
function whyRound(outside: Outside, wrap: Tie['wrap']): readonly Reason[] {
  if (wrap === 'none') return [];
  const { width, depth, height, round } = outside;
  const facts = {
    width: length(width),
    depth: length(depth),
    height: length(height),
    round: length(wrapLength(outside, wrap)),
    front: length(round.front),
    sides: length(round.sides),
  };
  const isPlain = (way: Ticks, one: Ticks, other: Ticks) => way === 2 * (one + other);
  const plain = {
    front: isPlain(round.front, depth, height),
    sides: isPlain(round.sides, width, height),
    walls: isPlain(round.walls, width, depth),
  };
  switch (wrap) {
    case 'cross':
      return plain.front && plain.sides
        ? [reason('Both ways around: 2 × {width} + 2 × {depth} + 4 × {height} = {round}.', facts)]
        : [reason('Both ways around, over the top of the folded box: {front} + {sides} = {round}.', facts)];
    case 'over-front':
      return plain.front
        ? [reason('Once around: 2 × ({depth} + {height}) = {round}.', facts)]
        : [reason('Once around, over the top of the folded box: {round}.', facts)];
    case 'over-sides':
      return plain.sides
        ? [reason('Once around: 2 × ({width} + {height}) = {round}.', facts)]
        : [reason('Once around, over the top of the folded box: {round}.', facts)];
    case 'pull':
      return [reason('Through the pull, with its loop and what is knotted or taped inside: {round}.', facts)];
    case 'ring':
      return plain.walls
        ? [reason('Around the walls: 2 × ({width} + {depth}) = {round}.', facts)]
        : [reason('Around the walls of the folded box: {round}.', facts)];
  }
}
