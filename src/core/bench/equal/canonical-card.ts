import type { Carrier } from '../../net/carrier';
import { type BenchCard, edgesOfCard } from './bench-card';
import { type CanonicalForm, FormGatherer, foldMark } from './canonical-form';
import { cutStretches, type Stretches, shareStretches } from './exact-intervals';
import { byLine, insideAlong } from './line-stretches';

/** The form of what lies on the bench. Scores and slits on waste or along an edge vanish; where both are, the slit is what counts. */
export function canonicalCard(card: BenchCard): CanonicalForm {
  const form = new FormGatherer();
  const edges = edgesOfCard(card);
  for (const edge of edges) form.addSegment(edge, 'outline');
  const inside = new Map<string, Stretches>();
  const keep = (key: string, line: Carrier, stretches: Stretches): Stretches => {
    const card = inside.get(key) ?? insideAlong(line, edges);
    inside.set(key, card);
    return shareStretches(stretches, card);
  };
  const slits = byLine(card.slits);
  const folds = byLine(card.folds);
  for (const [key, { line, stretches }] of slits) form.add(line, 'slit', keep(key, line, stretches));
  for (const [key, { line, stretches }] of byLine(card.scores)) {
    let left = cutStretches(keep(key, line, stretches), slits.get(key)?.stretches ?? []);
    for (const fold of folds.get(key)?.members ?? []) {
      form.add(line, `score ${foldMark(fold.deg)}`, shareStretches(left, [fold.stretch]));
      left = cutStretches(left, [fold.stretch]);
    }
    form.add(line, `score ${foldMark(0)}`, left);
  }
  return form.finish(card.acts);
}
