import { type At, type Box, boxOf, boxRing } from '../../plane';
import { CAP_HEIGHT, textWidthMm } from './letters';
import type { Drawing, Ink, Mark } from './types';

export type TextMark = Extract<Mark, { kind: 'text' }>;
export type ArcMark = Extract<Mark, { kind: 'arc' }>;
export type AreaMark = Extract<Mark, { kind: 'area' }>;

const keyed = (key: string | undefined) => (key === undefined ? {} : { key });

export const lineMark = (ink: Ink, points: readonly At[], key?: string): Mark => ({
  kind: 'line',
  ink,
  points,
  ...keyed(key),
});

export const areaMark = (
  ink: Ink,
  ring: readonly At[],
  key?: string,
  holes: readonly (readonly At[])[] = [],
): Mark => ({ kind: 'area', ink, ring, holes, ...keyed(key) });

/** Words with their baseline's `anchor` point at `at`. */
export const textMark = (
  text: string,
  at: At,
  sizeMm: number,
  style: { anchor?: TextMark['anchor']; bold?: boolean; turnDeg?: number; key?: string | undefined } = {},
): TextMark => ({
  kind: 'text',
  at,
  text,
  sizeMm,
  anchor: style.anchor ?? 'start',
  ...(style.bold ? { bold: true } : {}),
  ...(style.turnDeg ? { turnDeg: style.turnDeg } : {}),
  ...keyed(style.key),
});

/** Words whose capitals stand centred on a point. */
export function centredText(
  text: string,
  [x, y]: At,
  sizeMm: number,
  style: { bold?: boolean; turnDeg?: number; key?: string } = {},
): TextMark {
  const drop = (CAP_HEIGHT * sizeMm) / 2;
  const turn = ((style.turnDeg ?? 0) * Math.PI) / 180;
  return textMark(text, [x + drop * Math.sin(turn), y - drop * Math.cos(turn)], sizeMm, {
    ...style,
    anchor: 'middle',
  });
}

/** The corners of what a text's letters fill, from a little below the baseline (descenders) to capital height. */
export function textCorners({ text, at, sizeMm, anchor, bold, turnDeg }: TextMark): readonly At[] {
  const width = textWidthMm(text, sizeMm, bold);
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const turn = ((turnDeg ?? 0) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return boxRing({ left, right: left + width, bottom: -0.2 * sizeMm, top: CAP_HEIGHT * sizeMm }).map(
    ([x, y]): At => [at[0] + x * cos - y * sin, at[1] + x * sin + y * cos],
  );
}

export const textBox = (text: TextMark): Box => boxOf(textCorners(text));

/** A point of an arc, `deg` counter-clockwise from the x axis. */
export const pointOfArc = ([x, y]: At, radius: number, deg: number): At => {
  const turn = (deg * Math.PI) / 180;
  return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
};

/** The box that everything drawn fills; arcs by points every few degrees. */
export const boxOfMarks = (marks: readonly Mark[]): Box => boxOf(marks.flatMap(outlineOf));

function outlineOf(mark: Mark): readonly At[] {
  switch (mark.kind) {
    case 'line':
      return mark.points;
    case 'area':
      return mark.ring;
    case 'arc':
      return Array.from({ length: 33 }, (_, step) =>
        pointOfArc(mark.centre, mark.radius, mark.fromDeg + (mark.sweepDeg * step) / 32),
      );
    case 'text': {
      const { left, bottom, right, top } = textBox(mark);
      return [
        [left, bottom],
        [right, top],
      ];
    }
  }
}

/** Marks carried over by (dx, dy) mm. */
export const moveMarks = (marks: readonly Mark[], dx: number, dy: number): Mark[] =>
  marks.map((mark) => moveMark(mark, ([x, y]) => [x + dx, y + dy]));

function moveMark(mark: Mark, move: (point: At) => At): Mark {
  switch (mark.kind) {
    case 'line':
      return { ...mark, points: mark.points.map(move) };
    case 'area':
      return { ...mark, ring: mark.ring.map(move), holes: (mark.holes ?? []).map((hole) => hole.map(move)) };
    case 'arc':
      return { ...mark, centre: move(mark.centre) };
    case 'text':
      return { ...mark, at: move(mark.at) };
  }
}

/** A drawing cut to what it holds, with a margin all round; also says where the old origin went. */
export function frameMarks(
  marks: readonly Mark[],
  title: string,
  description: string,
  marginMm = 1,
): Drawing & { readonly origin: At } {
  const box = boxOfMarks(marks);
  const origin: At = [marginMm - box.left, marginMm - box.bottom];
  return {
    widthMm: box.right - box.left + 2 * marginMm,
    heightMm: box.top - box.bottom + 2 * marginMm,
    title,
    description,
    marks: moveMarks(marks, origin[0], origin[1]),
    origin,
  };
}
