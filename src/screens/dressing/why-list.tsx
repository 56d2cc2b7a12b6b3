import { type Reason, sayReason } from '../../core/plan';
import { lengthWords, useRuler } from '../../ui/measure';
import { usePageWords } from '../../ui/words';

/** The arithmetic of one size, line by line. */
export function WhyList({ why }: { why: readonly Reason[] }) {
  const words = usePageWords().dressing;
  const ruler = useRuler();
  const wording = {
    length: (length: Parameters<typeof lengthWords>[0]) => lengthWords(length, ruler),
    money: String,
  };
  return (
    <div className="dressing-why">
      <h4>{words.why}</h4>
      <ul>
        {why.map((reason) => {
          const text = sayReason(reason, wording);
          return <li key={text}>{text}</li>;
        })}
      </ul>
    </div>
  );
}
