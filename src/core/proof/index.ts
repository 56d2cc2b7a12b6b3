export { legalBoxes } from './legal-boxes';
export { notABox } from './not-a-box';
export { proveStyle, type StyleFault, type StyleProof } from './prove-style';
export { sayProof } from './say-fault';
