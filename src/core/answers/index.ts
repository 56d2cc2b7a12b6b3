export { compareKeys, markToolOf, rulerOfQuestion } from './boxes-that-hold';
export { findAnswers, rankAnswers } from './find-answers';
export * from './types';
export { recipeOfAnswer } from './weigh-box';
