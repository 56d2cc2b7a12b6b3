import { openDraft } from '../../core/draft/edit-style';
import { layNet } from '../../core/net';
import type { StyleFault } from '../../core/proof';
import { type BoxStyle, piecesOf } from '../../core/styles';
import { sayReason } from '../../core/units/reason';
import { useStyleProof } from '../../state/results/style-proof';
import { Button } from '../../ui/fields/button';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { FoldedPicture } from '../../ui/folded/folded-picture';
import { useWording } from '../../ui/frame/wording';
import { useSay } from '../../ui/words';
import { useDraftingWords } from '../../ui/words/drafting-words';

/** Most problems shown at once; what follows from the first need not be read. source: our own */
const MOST_SHOWN = 4;

/** The whole proof of the style on its way, then what it found: each problem with a size that shows it, folded. */
export function StyleProofView({ text }: { readonly text: string }) {
  const words = useDraftingWords();
  const proof = useStyleProof(text);
  const open = openDraft(text);
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
  const { faults, tried } = proof.proof;
  if (faults.length === 0)
    return (
      <p role="status" className="style-sound">
        {words.allWell(tried)}
      </p>
    );
  return (
    <div role="alert" className="style-refused">
      <strong>{words.faulty(faults.length)}</strong>
      <ul className="style-faults">
        {open.ok &&
          faults
            .slice(0, MOST_SHOWN)
            .map((fault) => (
              <Fault key={`${fault.check} ${fault.where} ${fault.says}`} style={open.style} fault={fault} />
            ))}
      </ul>
    </div>
  );
}

function Fault({ style, fault }: { readonly style: BoxStyle; readonly fault: StyleFault }) {
  const words = useDraftingWords();
  const say = useSay();
  const ruler = useRuler();
  const wording = useWording();
  const { at } = fault;
  const sizes = Object.entries(at?.sizes ?? {}).map(
    ([name, size]) => `${say(style.symbols[name]?.label ?? name)} ${lengthWords(size, ruler)}`,
  );
  const drawn = at !== null && Object.keys(piecesOf(style, at.options)).length > 0;
  return (
    <li>
      {drawn && (
        <span className="style-picture">
          <FoldedPicture net={layNet(style, at)} />
        </span>
      )}
      <p>
        {sayReason(fault, wording)}{' '}
        <span className="soft">{sayReason({ ...fault, says: fault.remedy }, wording)}</span>
        {at && <span className="style-fault-sizes">{words.at(sizes.join(', '))}</span>}
      </p>
    </li>
  );
}
