import { LAYERS, type Layer, type PlainLine, type PlainPiece, plainPiecesOf } from './plain-lines';
import type { BoxNet } from './types';

/**
 * A box as plain SVG for other programs: true size in mm, one group a layer (`cut`, `score`, `slit`, `pare`, `glue`), hair lines in black, inside
 * face up. Of several pieces, each has a named group of its own in every layer (`cut-lid`).
 */
export function svgOf(box: BoxNet, title: string): string {
  const { across, up, pieces } = plainPiecesOf(box);
  const drawn = (layer: Layer, { id, label, lines }: PlainPiece) => {
    const path = lines.filter((line) => line.layer === layer).map((line) => pathOf(line, up));
    if (pieces.length === 1) return `<path d="${path.join('')}"/>`;
    return `<g id="${escapeText(`${layer}-${id}`)}"><title>${escapeText(label)}</title><path d="${path.join('')}"/></g>`;
  };
  const groups = LAYERS.map(
    (layer) => `<g id="${layer}">${pieces.map((piece) => drawn(layer, piece)).join('')}</g>`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(across)}mm" height="${mm(up)}mm" viewBox="0 0 ${mm(across)} ${mm(up)}">`,
    `<title>${escapeText(title)}</title>`,
    `<g fill="none" stroke="#000" stroke-width="0.1">`,
    ...groups,
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** y runs down in SVG, so a counter-clockwise arc keeps its look with sweep 0. */
function pathOf({ a, b, arc }: PlainLine, up: number): string {
  const at = ([x, y]: readonly [number, number]) => `${mm(x)} ${mm(up - y)}`;
  return arc === null ? `M${at(a)}L${at(b)}` : `M${at(a)}A${mm(arc.radius)} ${mm(arc.radius)} 0 0 0 ${at(b)}`;
}

/** Six decimals hold a tick (0.003125 mm) exactly. */
const mm = (value: number): string => String(Number(value.toFixed(6)));

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escapeText = (text: string): string => text.replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? '');
