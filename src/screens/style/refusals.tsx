import type { StyleRefusal } from '../../core/style-file/style-refusal';
import { sayReason } from '../../core/units/reason';
import { useWording } from '../../ui/frame/wording';

/** Why something was not done, and what to do: value, reason, remedy. */
export function Refusals({ of, title }: { readonly of: readonly StyleRefusal[]; readonly title?: string }) {
  const wording = useWording();
  if (of.length === 0) return null;
  return (
    <div role="alert" className="style-refused">
      {title !== undefined && <strong>{title}</strong>}
      {of.slice(0, 3).map((refusal) => (
        <p key={`${refusal.code} ${refusal.path}`}>
          {sayReason(refusal, wording)}{' '}
          <span className="soft">{sayReason({ ...refusal, says: refusal.remedy }, wording)}</span>
        </p>
      ))}
    </div>
  );
}
