import { hatchLines } from '../core/draw/strokes/hatch';
import { INKS } from '../core/draw/strokes/inks';
import { pointOfArc } from '../core/draw/strokes/marks';
import type { Drawing, Mark } from '../core/draw/strokes/types';
import type { At } from '../core/plane';

/** The family named in every drawing; the screen serves it, an opened file falls back. */
const FAMILY = 'Inter, sans-serif';

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
// XML 1.0 has no place for control characters, not even escaped ones.
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
const NOT_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

/** Text that stays text inside SVG, whatever a maker has typed. */
export const escapeXml = (text: string): string =>
  text.replace(NOT_XML, '').replace(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);

/** A drawing as one SVG file at true size: 1 user unit is 1 mm, black on nothing. */
export function svgOf(drawing: Drawing): string {
  const { widthMm, heightMm } = drawing;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="title description"`,
    ` width="${mm(widthMm)}mm" height="${mm(heightMm)}mm" viewBox="0 0 ${mm(widthMm)} ${mm(heightMm)}"`,
    ` font-family="${FAMILY}" fill="none" stroke="none">\n`,
    `<title id="title">${escapeXml(drawing.title)}</title>\n`,
    `<desc id="description">${escapeXml(drawing.description)}</desc>\n`,
    ...drawing.marks.map((mark) => `${svgOfMark(mark, heightMm)}\n`),
    '</svg>\n',
  ].join('');
}

/** Three decimals, a thousandth of a millimeter, with no trailing zeros and never "-0". */
const mm = (length: number): string => `${Math.round(length * 1000) / 1000 || 0}`;

function svgOfMark(mark: Mark, heightMm: number): string {
  const at = ([x, y]: At) => `${mm(x)} ${mm(heightMm - y)}`;
  const key = mark.key === undefined ? '' : ` data-key="${escapeXml(mark.key)}"`;
  switch (mark.kind) {
    case 'line':
      return `<path d="M${mark.points.map(at).join('L')}"${strokeOf(mark.ink)}${key}/>`;
    case 'arc':
      return `<path d="${arcPath(mark, at)}"${strokeOf(mark.ink)}${key}/>`;
    case 'area':
      return svgOfArea(mark, at, key);
    case 'text': {
      const turn = mark.turnDeg ? ` transform="rotate(${mm(-mark.turnDeg)} ${at(mark.at)})"` : '';
      const weight = mark.bold ? ' font-weight="700"' : '';
      const [x, y] = at(mark.at).split(' ');
      return (
        `<text x="${x}" y="${y}" font-size="${mm(mark.sizeMm)}" text-anchor="${mark.anchor}" fill="#000"` +
        `${weight}${turn}${key}>${escapeXml(mark.text)}</text>`
      );
    }
  }
}

function strokeOf(ink: keyof typeof INKS): string {
  const { widthMm, dashMm } = INKS[ink];
  return widthMm === 0 ? '' : strokeAttributes(widthMm, dashMm);
}

const strokeAttributes = (widthMm: number, dashMm: readonly number[]): string =>
  ` stroke="#000" stroke-width="${mm(widthMm)}"${dashMm.length ? ` stroke-dasharray="${dashMm.map(mm).join(' ')}"` : ''}`;

function svgOfArea(mark: Extract<Mark, { kind: 'area' }>, at: (point: At) => string, key: string): string {
  const { fill } = INKS[mark.ink];
  const rings = [mark.ring, ...(mark.holes ?? [])].map((ring) => `M${ring.map(at).join('L')}Z`).join('');
  const ground =
    fill === 'white' || fill === 'black'
      ? ` fill="${fill === 'white' ? '#fff' : '#000'}" fill-rule="evenodd"`
      : '';
  const area = `<path d="${rings}"${ground}${strokeOf(mark.ink)}${key}/>`;
  if (typeof fill === 'string') return area;
  const lines = hatchLines(mark.ring, mark.holes ?? [], fill);
  const hatch = lines.map(([from, to]) => `M${at(from)}L${at(to)}`).join('');
  return `${area}<path d="${hatch}"${strokeAttributes(fill.widthMm, fill.dashMm)}${key}/>`;
}

/** SVG arcs end at a point and say which way round; a whole turn needs two halves. */
function arcPath(arc: Extract<Mark, { kind: 'arc' }>, at: (point: At) => string): string {
  const { centre, radius, fromDeg, sweepDeg } = arc;
  const halves = Math.abs(sweepDeg) > 180 ? 2 : 1;
  const steps = Array.from({ length: halves }, (_, n) => fromDeg + (sweepDeg * (n + 1)) / halves);
  const to = steps.map(
    (deg) =>
      `A${mm(radius)} ${mm(radius)} 0 0 ${sweepDeg > 0 ? 0 : 1} ${at(pointOfArc(centre, radius, deg))}`,
  );
  return `M${at(pointOfArc(centre, radius, fromDeg))}${to.join('')}`;
}
