export { inEdges, inPanels } from './add-ons/places';
export { OWN_NET } from './boxes/own-net';
export { defineStyle } from './language/define';
export {
  evaluateForm,
  expandForm,
  formOf,
  type LinearForm,
  printForm,
  readForm,
} from './language/linear-form';
export { StyleError } from './language/style-error';
export type * from './language/types';
export { STYLES, styleById } from './registry';
export { defaultChoices, everyAddOn, everyChoice, isGiven, piecesOf } from './shapes/choices';
export { limitsFor, symbolsFor } from './shapes/limits-for';
