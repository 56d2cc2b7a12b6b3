import { useState } from 'react';
import { openDraft } from '../../core/draft/edit-style';
import { useStyleProof } from '../../state/results/style-proof';
import { Button } from '../../ui/fields/button';
import { ProofFaults } from '../../ui/folded/proof-faults';
import { Reasons } from '../../ui/frame/reasons';
import { useDraftingWords } from '../../ui/words/drafting-words';

/** The trial of the style at many sizes, begun by its maker. */
export function StyleTrial({ text }: { readonly text: string }) {
  const words = useDraftingWords();
  const [tried, setTried] = useState<{ readonly text: string; readonly nth: number } | null>(null);
  return (
    <>
      <div className="style-acts">
        <Button tone="act" onClick={() => setTried({ text, nth: (tried?.nth ?? 0) + 1 })}>
          {tried === null ? words.tryIt : words.tryAgain}
        </Button>
      </div>
      {tried !== null && tried.text !== text && <p className="soft">{words.changedSince}</p>}
      {tried !== null && <Trial key={tried.nth} text={tried.text} />}
    </>
  );
}

/** The whole proof of the style on its way, then what it found. */
function Trial({ text }: { readonly text: string }) {
  const words = useDraftingWords();
  const proof = useStyleProof(text);
  if (proof.is === 'stopped') return <p role="status">{words.stopped}</p>;
  if (proof.is === 'away') return <p role="status">{words.notHere}</p>;
  if (proof.is === 'busy')
    return (
      <div className="style-trying">
        <label>
          {words.trying}
          <progress max={proof.of} value={proof.done} />
        </label>
        <span role="status">{words.tried(proof.done, proof.of)}</span>
        <Button tone="quiet" onClick={proof.stop}>
          {words.stopTrying}
        </Button>
      </div>
    );
  const { loose } = proof;
  const { faults, tried } = proof.proof;
  if (faults.length > 0) {
    const open = openDraft(text);
    return (
      <div role="alert" className="style-refused">
        <strong>{words.faulty(faults.length)}</strong>
        {open.ok && <ProofFaults style={open.style} faults={faults} at={words.at} />}
      </div>
    );
  }
  return (
    <>
      <p role="status" className="style-sound">
        {loose.length > 0 ? words.foldsBut(tried) : words.allWell(tried)}
      </p>
      <Reasons of={loose} severity="warn" title={words.loose} />
    </>
  );
}
