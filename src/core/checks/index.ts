export { checkBox, checkGeometry } from './check-box';
export { checkClosingPath } from './check-closing-path';
export type { ToolReach } from './check-handling';
export type { Finding } from './finding';
