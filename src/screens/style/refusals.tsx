import type { StyleRefusal } from '../../core/style-file/style-refusal';
import { ReasonAndRemedy } from '../../ui/frame/reason-and-remedy';

/** Why something was not done, and what to do: value, reason, remedy. */
export function Refusals({ of, title }: { readonly of: readonly StyleRefusal[]; readonly title?: string }) {
  if (of.length === 0) return null;
  return (
    <div role="alert" className="style-refused">
      {title !== undefined && <strong>{title}</strong>}
      {of.slice(0, 3).map((refusal) => (
        <p key={`${refusal.code} ${refusal.path}`}>
          <ReasonAndRemedy of={refusal} />
        </p>
      ))}
    </div>
  );
}
