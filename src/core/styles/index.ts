export { defaultChoices, defineStyle, everyChoice, piecesOf } from './define';
export { limitsFor } from './limits-for';
export { evaluateForm, expandForm, formOf, type LinearForm, printForm, readForm } from './linear-form';
export { STYLES, styleById } from './registry';
export { StyleError } from './style-error';
export type * from './types';
