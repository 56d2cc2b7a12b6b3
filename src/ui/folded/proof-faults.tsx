import { layNet } from '../../core/net';
import type { StyleFault } from '../../core/proof';
import { type BoxStyle, piecesOf } from '../../core/styles';
import { lengthWords, useRuler } from '../fields/measure';
import { ReasonAndRemedy } from '../frame/reason-and-remedy';
import { useSay } from '../words';
import { FoldedPicture } from './folded-picture';
import './proof-faults.css';

/** Most problems shown at once; what follows from the first need not be read. source: our own */
const MOST_SHOWN = 4;

interface ProofFaultsProps {
  readonly style: BoxStyle;
  readonly faults: readonly StyleFault[];
  /** Says at which sizes a problem shows. */
  readonly at: (sizes: string) => string;
}

/** What the proof of a style found: each problem with a size that shows it, folded. */
export function ProofFaults({ style, faults, at }: ProofFaultsProps) {
  return (
    <ul className="proof-faults">
      {faults.slice(0, MOST_SHOWN).map((fault) => (
        <Fault key={`${fault.check} ${fault.where} ${fault.says}`} {...{ style, fault, at }} />
      ))}
    </ul>
  );
}

function Fault({ style, fault, at }: Omit<ProofFaultsProps, 'faults'> & { readonly fault: StyleFault }) {
  const say = useSay();
  const ruler = useRuler();
  const seen = fault.at;
  const sizes = Object.entries(seen?.sizes ?? {}).map(
    ([name, size]) => `${say(style.symbols[name]?.label ?? name)} ${lengthWords(size, ruler)}`,
  );
  const drawn = seen !== null && Object.keys(piecesOf(style, seen.options)).length > 0;
  return (
    <li>
      {drawn && (
        <span className="style-picture">
          <FoldedPicture net={layNet(style, seen)} />
        </span>
      )}
      <p>
        <ReasonAndRemedy of={fault} />
        {seen && <span className="proof-fault-sizes">{at(sizes.join(', '))}</span>}
      </p>
    </li>
  );
}
