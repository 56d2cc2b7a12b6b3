import { piecesOf } from '../choices';
import type { AddOnPlace, BoxStyle, Chosen, ConstraintSpec, Pieces } from '../types';
import { dustEnds } from './dust-ends';
import type { Extension, PlainPieces } from './extension';
import { handleSlotIn } from './handle-slot';
import { hangTabOn } from './hang-tab';
import { thumbNotchIn } from './thumb-notch';
import { windowIn } from './window';

/**
 * A style with everything that may be added to it: one more option an add-on, its lengths (asked only when it is chosen), its limits, and
 * the panels and holes it makes. Every other room sees an ordinary style.
 */
export function withAddOns(style: BoxStyle): BoxStyle {
  const plain = rememberPieces((chosen) => piecesOf(style, chosen));
  const extensions = extensionsOf(style, plain);
  if (extensions.length === 0) return style;
  const merged = <T>(of: (extension: Extension) => Readonly<Record<string, T>>): Record<string, T> =>
    Object.assign({}, ...extensions.map(of)) as Record<string, T>;
  return {
    ...style,
    symbols: { ...style.symbols, ...merged(({ symbols }) => symbols) },
    quantities: { ...style.quantities, ...merged(({ quantities }) => quantities) },
    options: { ...style.options, ...merged(({ option: [id, spec] }) => ({ [id]: spec })) },
    constraints: [
      ...style.constraints,
      ...extensions.flatMap(({ constraints }) => constraints),
      ...sameEdge(style),
    ],
    pieces: rememberPieces((chosen) =>
      extensions.reduce((pieces, { extend }) => extend(pieces, chosen), plain(chosen)),
    ),
  };
}

function extensionsOf({ addOns = {} }: BoxStyle, plain: PlainPieces): readonly Extension[] {
  const some = (places: readonly AddOnPlace[] | undefined, make: typeof windowIn): readonly Extension[] =>
    places === undefined || places.length === 0 ? [] : [make(places, plain)];
  return [
    ...some(addOns.window, windowIn),
    ...some(addOns.notch, thumbNotchIn),
    ...some(addOns.slot, handleSlotIn),
    ...some(addOns.hangTab, hangTabOn),
    ...(addOns.dustFlaps ? [dustEnds] : []),
  ];
}

/** A notch cannot be cut from the edge that a hang tab carries on. */
function sameEdge({ addOns = {} }: BoxStyle): readonly ConstraintSpec[] {
  const edgeOf = ({ piece, at }: AddOnPlace) => `${piece} ${at[0]}`;
  const both = (addOns.notch ?? []).flatMap((notch) =>
    (addOns.hangTab ?? [])
      .filter((tab) => edgeOf(tab) === edgeOf(notch))
      .map((tab): Chosen => ({ notch: notch.id, hangTab: tab.id })),
  );
  if (both.length === 0) return [];
  return [
    {
      code: 'notch-under-hang-tab',
      symbol: 'notchRadius',
      atMost: '0 in',
      severity: 'stop',
      given: both,
      says: 'A hang tab stands on the edge that a notch of radius {notchRadius} would be cut from.',
      remedy: 'Leave one of them out, or put it on another panel.',
    },
  ];
}

/** Builds the pieces of each way of choosing once. */
function rememberPieces(build: PlainPieces): PlainPieces {
  const known = new Map<string, Pieces>();
  return (chosen: Chosen) => {
    const key = Object.entries(chosen).flat().join('\n');
    const pieces = known.get(key) ?? build(chosen);
    known.set(key, pieces);
    return pieces;
  };
}
