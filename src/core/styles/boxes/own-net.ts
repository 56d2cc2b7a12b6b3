import type { BoxStyle } from '../language/types';

/**
 * What a net of the maker's own has in place of a style: no sizes, no options, no limits, nothing promised. It is drawn, checked, carded and
 * counted from its FOLD file as it stands, so it is not in the registry and nothing lays it from this declaration.
 */
export const OWN_NET: BoxStyle = {
  id: 'own-net',
  version: 1,
  name: 'Your own net',
  source: 'A FOLD file of the maker’s own.',
  goodFor: 'A box you have drawn elsewhere, cut, scored and counted like any other.',
  watchOut: 'Its sizes are fixed in its file. Fold one from scrap before you cut good cardstock.',
  symbols: {},
  inside: ['t', 't', 't'],
  pieces: {},
  constraints: [],
  promises: [],
  traits: [],
};
