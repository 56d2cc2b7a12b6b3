import { type Reason, sayReason } from '../../core/units/reason';
import { useWording } from './wording';

/** What is wrong, and what to change. */
export function ReasonAndRemedy({ of }: { readonly of: Reason & { readonly remedy: string } }) {
  const wording = useWording();
  return (
    <>
      {sayReason(of, wording)} <span className="soft">{sayReason({ ...of, says: of.remedy }, wording)}</span>
    </>
  );
}
