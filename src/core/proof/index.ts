export { legalBoxes } from './legal-boxes';
export { looseEnds } from './loose-ends';
export { notABox } from './not-a-box';
export { proveStyle, type StyleFault, type StyleProof } from './prove-style';
export { sayProof } from './say-fault';
