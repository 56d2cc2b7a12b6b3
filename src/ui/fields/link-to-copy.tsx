import { Link2 } from 'lucide-react';
import { useState } from 'react';
import { Button } from './button';
import './link-to-copy.css';

interface LinkToCopyProps {
  readonly label: string;
  readonly address: string;
  /** The address as squares for a camera; null where it is too long for that. */
  readonly code: { readonly size: number; readonly path: string } | null;
  readonly words: Readonly<Record<'copy' | 'copied' | 'notCopied' | 'code', string>>;
}

/** An address to hand over: to copy, to select, or to scan. */
export function LinkToCopy({ label, address, code, words }: LinkToCopyProps) {
  const [said, setSaid] = useState('');
  const copy = () =>
    navigator.clipboard.writeText(address).then(
      () => setSaid(words.copied),
      () => setSaid(words.notCopied),
    );
  return (
    <div className="link-to-copy">
      <input readOnly value={address} aria-label={label} onFocus={(event) => event.target.select()} />
      <div>
        <Button icon={<Link2 aria-hidden="true" />} onClick={() => void copy()}>
          {words.copy}
        </Button>
        <p role="status">{said}</p>
      </div>
      {code && (
        <svg viewBox={`0 0 ${code.size} ${code.size}`} role="img" aria-label={words.code}>
          <path d={code.path} />
        </svg>
      )}
    </div>
  );
}
