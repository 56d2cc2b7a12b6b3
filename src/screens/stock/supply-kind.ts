import type { GlueSupply, PieceSupply, RollSupply, Supply } from '../../../shared/workbook';

/** A supply as another kind: what both kinds have is kept, the rest begins as is usual. source: common practice, no source. */
export function asKind(supply: Supply, kind: Supply['kind']): Supply {
  const { id, rev, createdAt, changedAt, name } = supply;
  const row = { id, rev, createdAt, changedAt, name };
  switch (kind) {
    case 'tape':
    case 'ribbon':
    case 'twine':
      return 'rollMm' in supply ? { ...supply, kind } : { ...row, kind, ...ROLL };
    case 'closure':
    case 'mount':
    case 'wrap':
    case 'contents':
      return 'onHandPieces' in supply ? { ...supply, kind } : { ...row, kind, ...PIECES };
    case 'glue':
      return supply.kind === 'glue' ? supply : { ...row, kind, ...GLUE };
  }
}

/** 1/4 in tape on 25 m. */
const ROLL: Pick<RollSupply, 'widthMm' | 'rollMm' | 'priceMinor' | 'onHandRolls' | 'wastePercent'> = {
  widthMm: 6.35,
  rollMm: 25_000,
  priceMinor: 0,
  onHandRolls: 0,
  wastePercent: 5,
};

const PIECES: Pick<PieceSupply, 'packs' | 'onHandPieces'> = { packs: [], onHandPieces: 0 };

/** White craft glue, spread thinly. */
const GLUE: Pick<
  GlueSupply,
  'bottleGrams' | 'gramsPerSquareMetre' | 'pressMinutes' | 'dryMinutes' | 'priceMinor' | 'onHandBottles'
> = {
  bottleGrams: 120,
  gramsPerSquareMetre: 60,
  pressMinutes: 1,
  dryMinutes: 30,
  priceMinor: 0,
  onHandBottles: 0,
};
