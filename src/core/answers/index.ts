export { compareKeys, markToolOf, rulerOfQuestion } from './boxes-that-hold';
export { findAnswers, type Part, rankAnswers } from './find-answers';
export * from './types';
export { recipeOfAnswer } from './weigh-box';
