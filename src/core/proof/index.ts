export { legalBoxes } from './legal-boxes';
export { proveStyle, type StyleFault } from './prove-style';
export { sayProof } from './say-fault';
