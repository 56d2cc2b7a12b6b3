export { inEdges, inPanels } from './add-ons/places';
export { defaultChoices, everyAddOn, everyChoice, isGiven, piecesOf } from './choices';
export { defineStyle } from './define';
export { limitsFor, symbolsFor } from './limits-for';
export { evaluateForm, expandForm, formOf, type LinearForm, printForm, readForm } from './linear-form';
export { OWN_NET } from './own-net';
export { STYLES, styleById } from './registry';
export { StyleError } from './style-error';
export type * from './types';
