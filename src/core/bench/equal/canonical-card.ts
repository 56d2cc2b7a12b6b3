import type { Carrier } from '../../net/carrier';
import type { CardFace } from '../types';
import { type BenchCard, edgesOfCard } from './bench-card';
import { type CanonicalForm, FormGatherer } from './canonical-form';
import { cutStretches, mergeStretches, type Stretches, shareStretches } from './exact-intervals';
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
  /** Card folds away from the face it was pressed on, over the bead; or towards it. */
  const wayOf = (groove: CardFace): 'score in' | 'score out' =>
    (groove === 'outside') === (card.creased === 'bead') ? 'score in' : 'score out';
  for (const [key, { line, stretches }] of slits) form.add(line, 'slit', keep(key, line, stretches));
  for (const [key, { line, members }] of byLine(card.scores)) {
    const cut = slits.get(key)?.stretches ?? [];
    const pressed = (groove: CardFace): Stretches => {
      const on = members.filter((score) => score.groove === groove).map(({ stretch }) => stretch);
      return cutStretches(keep(key, line, mergeStretches(on)), cut);
    };
    const [inside, outside] = [pressed('inside'), pressed('outside')];
    const both = shareStretches(inside, outside);
    form.add(line, wayOf('inside'), cutStretches(inside, both));
    form.add(line, wayOf('outside'), cutStretches(outside, both));
    form.add(line, 'score both', both);
  }
  return form.finish(card.acts);
}
