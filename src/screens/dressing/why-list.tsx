import { type Reason, sayReason } from '../../core/plan';
import { useWording } from '../../ui/frame/wording';
import { usePageWords } from '../../ui/words';

/** The arithmetic of one size, line by line. */
export function WhyList({ why }: { why: readonly Reason[] }) {
  const words = usePageWords().dressing;
  const wording = useWording();
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
