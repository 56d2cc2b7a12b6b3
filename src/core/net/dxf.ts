import { toDegrees } from '../units/angles';
import { LAYERS, type PlainLine, type PlainPiece, plainPiecesOf } from './plain-lines';
import type { BoxNet } from './types';

/** Color numbers that keep the layers apart on a dark or light ground. source: the drawing exchange format's index of colors; our choice of five */
const COLOUR = { cut: 7, score: 5, slit: 1, pare: 2, glue: 3, name: 8 } as const;
/** Where several pieces lie side by side, each has its name above it. mm; source: our choice */
const NAME = { high: 4, above: 3 } as const;

/**
 * A box as a plain DXF R12 (AC1009) text for other programs: millimeters, layers CUT, SCORE, SLIT, PARE and GLUE, lines and true arcs, y up,
 * inside face up; several pieces with their names above them on a layer NAME. Source: the published drawing exchange format, group codes of
 * release 12 (from memory).
 */
export function dxfOf(box: BoxNet): string {
  const { across, up, pieces } = plainPiecesOf(box);
  const isNamed = pieces.length > 1;
  const layers = [...LAYERS, ...(isNamed ? (['name'] as const) : [])];
  const codes: (readonly [number, string | number])[] = [
    [0, 'SECTION'],
    [2, 'HEADER'],
    [9, '$ACADVER'],
    [1, 'AC1009'],
    [9, '$EXTMIN'],
    [10, 0],
    [20, 0],
    [30, 0],
    [9, '$EXTMAX'],
    [10, across],
    [20, isNamed ? up + NAME.above + NAME.high : up],
    [30, 0],
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'TABLES'],
    [0, 'TABLE'],
    [2, 'LTYPE'],
    [70, 1],
    [0, 'LTYPE'],
    [2, 'CONTINUOUS'],
    [70, 0],
    [3, 'Solid line'],
    [72, 65],
    [73, 0],
    [40, 0],
    [0, 'ENDTAB'],
    [0, 'TABLE'],
    [2, 'LAYER'],
    [70, layers.length],
    ...layers.flatMap(
      (layer) =>
        [
          [0, 'LAYER'],
          [2, layer.toUpperCase()],
          [70, 0],
          [62, COLOUR[layer]],
          [6, 'CONTINUOUS'],
        ] as const,
    ),
    [0, 'ENDTAB'],
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'ENTITIES'],
    ...pieces.flatMap(({ lines }) => lines.flatMap(entityOf)),
    ...(isNamed ? pieces.flatMap((piece) => nameOf(piece, up)) : []),
    [0, 'ENDSEC'],
    [0, 'EOF'],
  ];
  return `${codes.map(([code, value]) => `${code}\r\n${typeof value === 'number' ? number(code, value) : value}`).join('\r\n')}\r\n`;
}

const nameOf = ({ label, left }: PlainPiece, up: number): (readonly [number, string | number])[] => [
  [0, 'TEXT'],
  [8, 'NAME'],
  [10, left],
  [20, up + NAME.above],
  [30, 0],
  [40, NAME.high],
  [1, inLatin(label)],
];

/** Release 12 holds plain ASCII; any other letter is written as its number, which older readers may show as it stands (from memory). */
const inLatin = (text: string): string =>
  text.replace(/[^ -~]/g, (sign) => `\\U+${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`);

function entityOf({ layer, a, b, arc }: PlainLine): (readonly [number, string | number])[] {
  const on = [8, layer.toUpperCase()] as const;
  if (arc === null)
    return [[0, 'LINE'], on, [10, a[0]], [20, a[1]], [30, 0], [11, b[0]], [21, b[1]], [31, 0]];
  const angle = ([x, y]: PlainLine['a']) =>
    (toDegrees(Math.atan2(y - arc.centre[1], x - arc.centre[0])) + 360) % 360;
  return [
    [0, 'ARC'],
    on,
    [10, arc.centre[0]],
    [20, arc.centre[1]],
    [30, 0],
    [40, arc.radius],
    [50, angle(a)],
    [51, angle(b)],
  ];
}

/** Whole-number codes (60 to 79) take no decimals, all others keep a tick (0.003125 mm) exactly. */
const number = (code: number, value: number): string =>
  code >= 60 && code < 80 ? String(value) : value.toFixed(6);
