export { type AskedBox, legalBoxes } from './legal-boxes';
export { type ProofCheck, proveStyle, type StyleFault, type StyleProof } from './prove-style';
export { sayProof } from './say-fault';
