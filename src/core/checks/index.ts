export { checkBox, checkGeometry } from './check-box';
export { checkClosingPath, closingNotFollowed } from './check-closing-path';

export { checkOwnNet } from './check-own-net';
export type { Finding } from './finding';
