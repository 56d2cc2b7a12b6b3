import { useState } from 'react';
import { codeOf } from '../../print';
import { Button } from '../../ui/fields/button';
import { useKeepingWords } from '../../ui/words/keeping-words';

interface SharedLinkProps {
  readonly title: string;
  readonly why: string;
  /** What stands after `#/` in the address. */
  readonly link: string;
}

/** A link to hand over, to copy or to scan. */
export function SharedLink({ title, why, link }: SharedLinkProps) {
  const words = useKeepingWords().sharing;
  const [said, setSaid] = useState('');
  const address = `${location.href.replace(/#.*$/, '')}#/${link}`;
  const code = codeOf(address);
  const copy = () =>
    navigator.clipboard.writeText(address).then(
      () => setSaid(words.copied),
      () => setSaid(words.notCopied),
    );
  return (
    <div className="sharing-link">
      <div>
        <h3>{title}</h3>
        <p className="soft">{why}</p>
        <input readOnly value={address} aria-label={title} onFocus={(event) => event.target.select()} />
        <Button onClick={() => void copy()}>{words.copy}</Button>
        <p role="status">{said}</p>
      </div>
      {code && (
        <svg
          className="sharing-code"
          viewBox={`0 0 ${code.size} ${code.size}`}
          role="img"
          aria-label={words.code}
        >
          <path d={code.path} />
        </svg>
      )}
    </div>
  );
}
