import { ShieldCheck } from 'lucide-react';
import type { NamedPart } from '../../core/draw/sheet/sheet-drawing';
import type { PlannedPaper } from '../../core/plan';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';

const commonOf = (a: number, b: number): number => (b === 0 ? a : commonOf(b, a % b));

/** Whether fewer sheets could do, and why not: opens to the points of every part and the sums that anyone can follow. */
export function ProofBadge({ planned, parts }: { planned: PlannedPaper; parts: readonly NamedPart[] }) {
  const { sheets: words, locale } = usePageWords();
  const { plan } = planned;
  const head = plan.proven ? words.proven : words.bounded(plan.sheets - plan.lowerBound);
  const { proof } = plan;
  if (proof === null || plan.sheets === 0) return <p className="proof">{head}</p>;
  const common = Object.values(proof.points).reduce(commonOf, proof.most) || 1;
  const points = (id: string) => Math.round((proof.points[id] ?? 0) / common);
  const most = proof.most / common;
  const placed = planned.demand.filter(({ id }) => !plan.unplaced.includes(id));
  const total = placed.reduce((sum, { id, count }) => sum + points(id) * count, 0);
  const fewer = proof.sheets - 1;
  const figures = new Intl.NumberFormat(locale);
  return (
    <div className="proof">
      <Opening
        head={
          <>
            <ShieldCheck className="proof-mark" aria-hidden="true" /> {head}
          </>
        }
      >
        <ul className="proof-sums">
          <li>
            {placed
              .map(({ id }) => words.points(parts.find((part) => part.id === id)?.mark ?? '', points(id)))
              .join('; ')}
            .
          </li>
          <li>{words.pointsMost(most)}</li>
          <li>{words.pointsAll(figures.format(total))}</li>
          {fewer > 0 && <li>{words.pointsTooFew(fewer, figures.format(fewer * most))}</li>}
          <li className="soft">{words.recount}</li>
        </ul>
      </Opening>
    </div>
  );
}
