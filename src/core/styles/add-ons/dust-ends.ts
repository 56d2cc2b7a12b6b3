import type { PanelSpec, Pieces } from '../language/types';
import type { Extension } from './extension';

/** Dust flaps with square ends instead of slanted ones: quicker to cut, slower to fold in. Common practice, no source. */
export const dustEnds: Extension = {
  options: {
    dustEnds: {
      label: 'Dust flaps',
      help: 'Slanted ends slip in more easily; square ends are fewer cuts.',
      choices: [
        { id: 'slanted', label: 'Slanted ends' },
        { id: 'square', label: 'Square ends' },
      ],
      addOn: true,
    },
  },
  symbols: {},
  quantities: {},
  constraints: [
    {
      code: 'tuck-catches-square-flaps',
      symbol: 'tuck',
      atMost: '3/4 depth',
      severity: 'stop',
      given: [{ dustEnds: 'square' }],
      says: 'A tuck {tuck} long catches on square dust flaps under a lid {depth} deep.',
      remedy: 'Make it at most {limit}, or slant the dust flaps.',
    },
    {
      // the last wall is a card narrower than its lid's place, and the lid stands nearer to that flap
      code: 'square-flap-near-lid',
      symbol: 'relief',
      atLeast: 't + 1/16 in',
      severity: 'warn',
      given: [{ dustEnds: 'square', order: 'side', tab: 'right' }],
      says: 'A relief of {relief} leaves a strip too narrow to cut out between the lid and a square dust flap.',
      remedy: 'Make it at least {limit}, or slant the dust flaps.',
    },
  ],
  extend: (pieces, chosen) => {
    if (chosen['dustEnds'] !== 'square') return pieces;
    return Object.fromEntries(
      Object.entries(pieces).map(([id, piece]): [string, Pieces[string]] => {
        const panels = Object.entries(piece.panels).map(([name, panel]): [string, PanelSpec] =>
          panel.role === 'dustFlap' && 'size' in panel ? [name, { ...panel, taper: '0' }] : [name, panel],
        );
        return [id, { ...piece, panels: Object.fromEntries(panels) }];
      }),
    );
  },
};
