import type { AddOnPlace, BoxStyle, Chosen, ConstraintSpec, Pieces } from '../language/types';
import { everyChoice, piecesOf } from '../shapes/choices';
import { dustEnds } from './dust-ends';
import type { Extension, PlainPieces } from './extension';
import { handleSlotIn } from './handle-slot';
import { hangTabOn } from './hang-tab';
import { ribbonHoleIn } from './ribbon-hole';
import { ribbonPullIn } from './ribbon-pull';
import { roundCornersAt } from './round-corners';
import { thumbNotchIn } from './thumb-notch';
import { windowIn } from './window';

/**
 * A style with everything that may be added to it: one more option an add-on, its lengths (asked only when it is chosen), its limits, and
 * the panels and holes it makes. Every other room sees an ordinary style. Built when the style is first asked for any of it: a start that
 * draws one box does not build twenty.
 */
export function withAddOns(style: BoxStyle): BoxStyle {
  if (!style.addOns) return style;
  let built: BoxStyle | null = null;
  const whole = () => (built ??= buildInto(style));
  return {
    ...style,
    get symbols() {
      return whole().symbols;
    },
    get quantities() {
      return whole().quantities ?? {};
    },
    get options() {
      return whole().options ?? {};
    },
    get constraints() {
      return whole().constraints;
    },
    get pieces() {
      return whole().pieces;
    },
  };
}

function buildInto(style: BoxStyle): BoxStyle {
  const plain = rememberPieces((chosen) => piecesOf(style, chosen));
  const extensions = extensionsOf(style, plain);
  if (extensions.length === 0) return style;
  const merged = <T>(of: (extension: Extension) => Readonly<Record<string, T>>): Record<string, T> =>
    Object.assign({}, ...extensions.map(of)) as Record<string, T>;
  return {
    ...style,
    symbols: { ...style.symbols, ...merged(({ symbols }) => symbols) },
    quantities: { ...style.quantities, ...merged(({ quantities }) => quantities) },
    options: { ...style.options, ...merged(({ options }) => options) },
    constraints: [
      ...style.constraints,
      ...extensions.flatMap(({ constraints }) => constraints),
      ...samePanel(style),
    ],
    pieces: rememberPieces((chosen) =>
      extensions.reduce((pieces, { extend }) => extend(pieces, chosen), plain(chosen)),
    ),
  };
}

function extensionsOf(style: BoxStyle, plain: PlainPieces): readonly Extension[] {
  const { addOns = {} } = style;
  const some = (
    places: readonly AddOnPlace[] | undefined,
    make: (places: readonly AddOnPlace[], plain: PlainPieces) => Extension,
  ): readonly Extension[] => (places === undefined || places.length === 0 ? [] : [make(places, plain)]);
  return [
    ...some(addOns.window, (places) => windowIn(places, plain, everyChoice(style))),
    ...some(addOns.notch, thumbNotchIn),
    ...some(addOns.slot, handleSlotIn),
    ...some(addOns.ribbon, ribbonHoleIn),
    ...some(addOns.pull, ribbonPullIn),
    ...some(addOns.corners, (places) =>
      roundCornersAt(places, plain, addOns.notch, [
        { option: 'slot', places: addOns.slot ?? [], across: 'slotLength' },
        { option: 'ribbon', places: addOns.ribbon ?? [], across: 'ribbonHole' },
      ]),
    ),
    ...some(addOns.hangTab, hangTabOn),
    ...(addOns.dustFlaps ? [dustEnds] : []),
  ];
}

/** What cannot be had at once in one panel: two openings, or a notch in the edge that a hang tab carries on. */
function samePanel({ addOns = {} }: BoxStyle): readonly ConstraintSpec[] {
  return CLASHES.flatMap(([one, other, symbol, says]): readonly ConstraintSpec[] => {
    const given = (addOns[one] ?? []).flatMap((place) =>
      (addOns[other] ?? [])
        .filter((rival) => panelsOf(rival).some((panel) => panelsOf(place).includes(panel)))
        .map((rival): Chosen => ({ [one]: place.id, [other]: rival.id })),
    );
    if (given.length === 0) return [];
    return [
      {
        code: `${one}-meets-${other}`.replace('hangTab', 'hang-tab'),
        symbol,
        atMost: '0 in',
        severity: 'stop',
        given,
        says,
        remedy: 'Put one of them in another panel, or leave it out.',
      },
    ];
  });
}

const panelsOf = ({ piece, at }: AddOnPlace): readonly string[] =>
  at.map((where) => `${piece} ${where.split('.')[0]}`);

const CLASHES = [
  ['window', 'notch', 'windowMargin', 'A window and a thumb notch would be cut from the same panel.'],
  ['window', 'slot', 'windowMargin', 'A window and a handle slot would be cut from the same panel.'],
  ['slot', 'notch', 'slotLength', 'A handle slot and a thumb notch would be cut from the same panel.'],
  ['ribbon', 'window', 'ribbonHole', 'A ribbon hole and a window would be cut from the same panel.'],
  ['ribbon', 'slot', 'ribbonHole', 'A ribbon hole and a handle slot would be cut from the same panel.'],
  ['ribbon', 'notch', 'ribbonHole', 'A ribbon hole and a thumb notch would be cut from the same panel.'],
  ['pull', 'ribbon', 'pullLoop', 'A ribbon pull and a ribbon hole would be cut from the same panel.'],
  ['pull', 'notch', 'pullLoop', 'A ribbon pull and a thumb notch would be cut from the same panel.'],
  ['notch', 'hangTab', 'notchRadius', 'A hang tab stands on the edge that the notch would be cut from.'],
] as const;

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
