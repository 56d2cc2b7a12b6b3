/** What a knife needs between two cuts that meet, degrees: ten at the least, and a little so that rounding leaves it. source: common practice, no source */
export const BETWEEN_CUTS_DEG = 12;
