import type { BoxNet } from '../net/types';
import { evaluateForm, formOf } from '../styles/linear-form';
import type { BoxStyle, PromiseSpec } from '../styles/types';
import { toMm } from '../units/ticks';
import { seenFrom } from './check-joints';
import { asTicks, type ClosedPiece, panelWords } from './closed-piece';
import type { Finding } from './finding';
import { type At, areaOf, convexParts, counterClockwise, outsideParts } from './planar';

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
      facts: { hole: asTicks(hole) },
      says: `The ${promise.panels.map(panelWords).join(' and the ')} leave a hole {hole} wide.`,
      remedy: 'Make them longer by at least half of it each.',
    },
  ];
}

/** The outer piece's floor is larger than the inner one's by the promised gap, both ways, and the gap takes two calipers. */
function checkNest(promise: Nest, box: BoxNet, closed: readonly ClosedPiece[]): Finding[] {
  const [inner, outer] = [promise.inner, promise.outer].map((id) =>
    closed.find(({ piece }) => piece.id === id),
  );
  if (inner === undefined || outer === undefined) return [];
  const gap = toMm(evaluateForm(formOf(promise.gap), box.values));
  const [p, q] = [footprint(inner), footprint(outer)];
  const play = Math.min(q[0] - p[0], q[1] - p[1]);
  const tight =
    play < (2 * box.caliperUm) / 1000 - inner.toleranceMm || Math.abs(play - gap) > 2 * inner.toleranceMm;
  if (!tight) return [];
  return [
    {
      code: 'pieces-do-not-nest',
      severity: 'stop',
      where: promise.outer,
      facts: { play: asTicks(play), least: asTicks((2 * box.caliperUm) / 1000) },
      says: `The ${promise.outer} is {play} larger than the ${promise.inner}; twice the thickness of the card is {least}.`,
      remedy: 'Make the ease larger.',
    },
  ];
}

/** How wide and deep the piece stands on the bench, score to score. */
function footprint({ faces }: ClosedPiece): readonly [number, number] {
  const corners = faces.flatMap(({ ring }) => ring);
  const span = (axis: 0 | 1) =>
    Math.max(...corners.map((corner) => corner[axis])) - Math.min(...corners.map((corner) => corner[axis]));
  return [span(0), span(1)];
}
