export { checkBox, checkGeometry } from './check-box';
export { checkClosingPath, closingNotFollowed } from './check-closing-path';
export type { ToolReach } from './check-handling';
export { checkOwnNet } from './check-own-net';
export type { Finding } from './finding';
