import type { ClosedPiece } from '../fold';
import type { BoxNet } from '../net/types';
import { type At, areaOf, convexParts, counterClockwise, outsideParts } from '../plane';
import { evaluateForm, formOf } from '../styles/language/linear-form';
import type { BoxStyle, PromiseSpec } from '../styles/language/types';
import { toMm } from '../units/ticks';
import { seenFrom } from './check-joints';
import { asTicks, type Finding, panelWords } from './finding';

/** What a style promises at every size: flaps cover an opening, one piece goes over another. */
export const checkPromises = (style: BoxStyle, box: BoxNet, closed: readonly ClosedPiece[]): Finding[] =>
  style.promises.flatMap((promise) =>
    promise.claim === 'covers' ? checkCover(promise, box, closed) : checkNest(promise, box, closed),
  );

type Cover = Extract<PromiseSpec, { readonly claim: 'covers' }>;
type Nest = Extract<PromiseSpec, { readonly claim: 'nests' }>;

/** The panels together cover as much as the opening has, seen in the first one's plane. */
function checkCover(promise: Cover, box: BoxNet, closed: readonly ClosedPiece[]): Finding[] {
  const found = closed.find(({ piece }) => piece.id === promise.piece);
  if (found === undefined) return [];
  const { piece, faces, toleranceMm } = found;
  const [across, up] = promise.area.map((text) => toMm(evaluateForm(formOf(text), box.values)));
  if (across === undefined || up === undefined) return [];
  const covering = piece.faces.flatMap(({ panel }, at) => (promise.panels.includes(panel) ? [at] : []));
  const plane = faces[covering[0] ?? 0]?.pose;
  if (plane === undefined) return [];
  const done: (readonly At[])[] = [];
  let covered = 0;
  for (const face of covering) {
    const ring = (faces[face]?.ring ?? []).map((corner): At => {
      const [x, y] = seenFrom(plane, corner);
      return [x, y];
    });
    const whole = convexParts(counterClockwise(ring));
    let parts: readonly (readonly At[])[] = whole;
    for (const cover of done) parts = parts.flatMap((part) => outsideParts(part, cover));
    covered += parts.reduce((sum, part) => sum + areaOf(part), 0);
    done.push(...whole);
  }
  const hole = (across * up - covered) / Math.max(across, up);
  const gap = Math.max(0, ...piece.seams.map((seam) => toMm(seam.gap)));
  if (hole <= 2 * toleranceMm + gap) return [];
  return [
    {
      code: 'panels-leave-hole',
      severity: 'stop',
      where: promise.panels[0] ?? piece.id,
      facts: { panels: promise.panels.map(panelWords), hole: asTicks(hole) },
      says: 'The {panels} leave a hole {hole} wide.',
      remedy: 'Make them longer by at least half of it each.',
    },
  ];
}

/** The outer piece is larger than the inner one by the promised gaps, across and deep, or across and high if the inner one slides in. */
function checkNest(promise: Nest, box: BoxNet, closed: readonly ClosedPiece[]): Finding[] {
  const [inner, outer] = [promise.inner, promise.outer].map((id) =>
    closed.find(({ piece }) => piece.id === id),
  );
  if (inner === undefined || outer === undefined) return [];
  const [first = 0, second = 0] = promise.gap.map((text) => toMm(evaluateForm(formOf(text), box.values)));
  const [small, large] = [extentOf(inner), extentOf(outer)];
  const way = promise.slides ? 2 : 1;
  const [across, other] = [large[0] - small[0], large[way] - small[way]];
  const slack = 2 * inner.toleranceMm;
  if (Math.abs(across - first) <= slack && Math.abs(other - second) <= slack) return [];
  return [
    {
      code: 'pieces-do-not-nest',
      severity: 'stop',
      where: promise.outer,
      facts: { outer: promise.outer, inner: promise.inner, play: asTicks(Math.min(across, other)) },
      says: 'The {outer} is only {play} larger than the {inner} when both are folded.',
      remedy: 'Make the ease larger.',
    },
  ];
}

/** How wide, deep and high the closed piece stands on the bench, score to score, mm. */
function extentOf({ faces }: ClosedPiece): readonly [number, number, number] {
  const corners = faces.flatMap(({ ring }) => ring);
  const span = (axis: 0 | 1 | 2) =>
    Math.max(...corners.map((corner) => corner[axis])) - Math.min(...corners.map((corner) => corner[axis]));
  return [span(0), span(1), span(2)];
}
