import { layNet } from '../../core/net';
import type { StyleFault } from '../../core/proof';
import type { BoxStyle } from '../../core/styles';
import { useStyleProof } from '../../state/results/style-proof';
import { Button } from '../../ui/fields/button';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { FoldedPicture } from '../../ui/folded/folded-picture';
import { usePickingWords } from '../../ui/words/picking-words';
import { ReasonAndRemedy } from './reason-and-remedy';

/** Most problems shown at once; what follows from the first need not be read. source: our own */
const MOST_SHOWN = 4;

/** The published proof of a style on its way: how far it is, then what it found, each with the size that shows it, folded. */
export function StyleProofView({ style, text }: { readonly style: BoxStyle; readonly text: string }) {
  const words = usePickingWords();
  const proof = useStyleProof(text);
  if (proof.is === 'away') return null;
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
  const { faults, tried } = proof.proof;
  if (faults.length === 0) return <p role="status">{words.sound(style.name, tried)}</p>;
  return (
    <div role="alert" className="own-net-refused">
      <strong>{words.faulty(style.name, faults.length)}</strong>
      <ul className="own-style-faults">
        {faults.slice(0, MOST_SHOWN).map((fault) => (
          <Fault key={`${fault.check} ${fault.where} ${fault.says}`} style={style} fault={fault} />
        ))}
      </ul>
    </div>
  );
}

function Fault({ style, fault }: { readonly style: BoxStyle; readonly fault: StyleFault }) {
  const words = usePickingWords();
  const ruler = useRuler();
  const { at } = fault;
  const sizes = Object.entries(at?.sizes ?? {}).map(
    ([name, size]) => `${style.symbols[name]?.label ?? name} ${lengthWords(size, ruler)}`,
  );
  return (
    <li>
      {at && (
        <span className="style-picture">
          <FoldedPicture net={layNet(style, at)} />
        </span>
      )}
      <p>
        <ReasonAndRemedy of={fault} />
        {at && <span className="own-style-sizes">{words.at(sizes.join(', '))}</span>}
      </p>
    </li>
  );
}
