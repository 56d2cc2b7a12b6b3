import type { GlueSupply, PieceSupply, RollSupply, Supply } from '../../../shared/workbook';
import { useWorkbook } from '../../state/use-workbook';
import { CountStepper } from '../../ui/fields/count-stepper';
import { NumberField } from '../../ui/fields/number-field';
import { SelectField, TextField } from '../../ui/fields/text-field';
import { useWords } from '../../ui/words';
import { PackList } from './pack-list';
import { RollFields } from './roll-fields';

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

/** Numbers of a glue: how each is asked for. */
const NUMBERS = [
  { name: 'bottleGrams', unit: 'g', least: 1, most: 10_000, decimals: 0 },
  { name: 'gramsPerSquareMetre', unit: 'g/m²', least: 1, most: 1000, decimals: 0 },
  { name: 'pressMinutes', unit: 'min', least: 0, most: 1440, decimals: 0 },
  { name: 'dryMinutes', unit: 'min', least: 0, most: 10_080, decimals: 0 },
  { name: 'priceMinor', unit: '', least: 0, most: 100_000_000, decimals: 2 },
] as const;

const KINDS = ['tape', 'glue', 'ribbon', 'twine', 'closure', 'mount', 'wrap', 'contents'] as const;

/** Anything beside paper: what it is, how it is sold, what it costs, how much of it lies in the drawer. */
export function SupplyForm({ supply }: { supply: Supply }) {
  const words = useWords().stock;
  const edit = useWorkbook((state) => state.edit);
  const set = (label: string, change: (old: Supply) => Supply) =>
    void edit('supplies', supply.id, label, change);
  return (
    <form className="stock-form" onSubmit={(event) => event.preventDefault()}>
      <TextField
        label={words.name}
        value={supply.name}
        onChange={(name) => set(words.name, (old) => ({ ...old, name }))}
      />
      <SelectField
        label={words.kind}
        value={supply.kind}
        choices={KINDS.map((id) => ({ id, label: words.kinds[id] }))}
        onChange={(id) => {
          const kind = KINDS.find((each) => each === id);
          if (kind) set(words.kind, (old) => asKind(old, kind));
        }}
      />
      {'rollMm' in supply && <RollFields supply={supply} />}
      {'onHandPieces' in supply && <PieceFields supply={supply} />}
      {supply.kind === 'glue' && <GlueFields supply={supply} />}
    </form>
  );
}

/** Liquid glue: the bottle, how thick it is spread, how long it is held and left to dry. */
function GlueFields({ supply }: { supply: GlueSupply }) {
  const words = useWords().stock;
  const edit = useWorkbook((state) => state.edit);
  const set = (label: string, change: Partial<GlueSupply>) =>
    void edit('supplies', supply.id, label, (old) => ({ ...old, ...change }) as GlueSupply);
  return (
    <>
      {NUMBERS.map(({ name, unit, least, most, decimals }) => (
        <NumberField
          key={name}
          label={words.glue[name]}
          {...(unit === '' ? {} : { unit })}
          {...(name === 'gramsPerSquareMetre' ? { help: words.spreadHelp } : {})}
          value={supply[name]}
          least={least}
          most={most}
          decimals={decimals}
          onChange={(value) => set(words.glue[name], { [name]: value })}
        />
      ))}
      <div className="field">
        <span className="field-name">{words.glue.onHandBottles}</span>
        <CountStepper
          label={words.glue.onHandBottles}
          value={supply.onHandBottles}
          onChange={(onHandBottles) => set(words.glue.onHandBottles, { onHandBottles })}
        />
      </div>
    </>
  );
}

/** Seals, clips, foam squares, bags, what is given: packs by the piece, and how many lie in the drawer. */
function PieceFields({ supply }: { supply: PieceSupply }) {
  const words = useWords().stock;
  const edit = useWorkbook((state) => state.edit);
  const set = (label: string, change: Partial<PieceSupply>) =>
    void edit('supplies', supply.id, label, (old) => ({ ...old, ...change }) as PieceSupply);
  return (
    <>
      <div className="field">
        <span className="field-name">{words.piecesOnHand}</span>
        <CountStepper
          label={words.piecesOnHand}
          value={supply.onHandPieces}
          onChange={(onHandPieces) => set(words.piecesOnHand, { onHandPieces })}
        />
      </div>
      <PackList
        packs={supply.packs}
        holds={{ field: 'pieces', label: words.piecesInPack, most: 100_000 }}
        first={{ pieces: 20, priceMinor: 0 }}
        onChange={(label, packs) => set(label, { packs })}
      />
    </>
  );
}

/** A supply as another kind: what both kinds have is kept, the rest begins as is usual. source: common practice, no source. */
function asKind(supply: Supply, kind: Supply['kind']): Supply {
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
