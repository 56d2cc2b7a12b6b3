export { OWN_NET } from './boxes/own-net';
export { defineStyle } from './language/define';
export {
  evaluateForm,
  formOf,
} from './language/linear-form';
export { StyleError } from './language/style-error';
export type * from './language/types';
export { bringStyle, dropStyle, STYLES, styleById } from './registry';
export { defaultChoices, everyChoice, piecesOf } from './shapes/choices';
export { optionsFor, symbolsFor } from './shapes/limits-for';
