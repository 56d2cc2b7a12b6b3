import type { BoxStyle } from '../../core/styles';
import { useStyleProof } from '../../state/results/style-proof';
import { Button } from '../../ui/fields/button';
import { ProofFaults } from '../../ui/folded/proof-faults';
import { Reasons } from '../../ui/frame/reasons';
import { usePickingWords } from '../../ui/words/picking-words';

/** The published proof of a style on its way: how far it is, then what it found, each with the size that shows it, folded. */
export function StyleProofView({ style, text }: { readonly style: BoxStyle; readonly text: string }) {
  const words = usePickingWords();
  const proof = useStyleProof(text);
  if (proof.is === 'stopped' || proof.is === 'away') return null;
  if (proof.is === 'busy')
    return (
      <div className="own-style-busy">
        <label>
          {words.checking}
          <progress max={proof.of} value={proof.done} />
        </label>
        <span role="status">{words.checked(proof.done, proof.of)}</span>
        <Button tone="quiet" onClick={proof.stop}>
          {words.stopChecking}
        </Button>
      </div>
    );
  const { loose } = proof;
  const { faults, tried } = proof.proof;
  if (faults.length === 0)
    return (
      <>
        <p role="status">
          {loose.length > 0 ? words.soundBut(style.name, tried) : words.sound(style.name, tried)}
        </p>
        <Reasons of={loose} severity="warn" title={words.loose} />
      </>
    );
  return (
    <div role="alert" className="own-net-refused">
      <strong>{words.faulty(style.name, faults.length)}</strong>
      <ProofFaults style={style} faults={faults} at={words.at} />
    </div>
  );
}
