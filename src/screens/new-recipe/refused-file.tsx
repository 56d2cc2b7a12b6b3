import type { ReactNode } from 'react';

/** Most reasons shown at once; what follows from the first need not be read. source: our own */
const MOST_SHOWN = 5;

interface RefusedFileProps<Refused> {
  readonly title: string;
  readonly refusals: readonly Refused[];
  readonly say: (refusal: Refused) => ReactNode;
}

/** Why a file makes no box. */
export function RefusedFile<Refused extends { readonly code: string; readonly path: string }>({
  title,
  refusals,
  say,
}: RefusedFileProps<Refused>) {
  return (
    <div role="alert" className="own-net-refused">
      <strong>{title}</strong>
      {refusals.slice(0, MOST_SHOWN).map((refusal) => (
        <p key={`${refusal.code} ${refusal.path}`}>{say(refusal)}</p>
      ))}
    </div>
  );
}
