import type { DressingPiece, PieceFit } from '../../../shared/workbook';
import { withCells } from '../../core/dress';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { type Ticks, ticks } from '../../core/units';
import { CountStepper } from '../../ui/fields/count-stepper';
import { LengthField } from '../../ui/fields/length-field';
import { SelectField } from '../../ui/fields/text-field';
import { usePageWords } from '../../ui/words';
import type { DressingEdits } from './dressing-edits';

type Divides = Extract<PieceFit, { rule: 'divides' }>;
type OnFloor = Extract<PieceFit, { rule: 'on-floor' }>;

interface InsertFieldsProps {
  readonly piece: DressingPiece;
  readonly fit: Divides | OnFloor;
  readonly edits: DressingEdits;
}

const HOLES = ['none', 'round', 'square'] as const;
const NOTHING = ticks(0);
const MOST_CELLS = 12;

/** What stands inside the box: cells of dividers, or a floor with its height and holes. */
export function InsertFields({ piece, fit, edits }: InsertFieldsProps) {
  const words = usePageWords().dressing;
  if (fit.rule === 'divides') return <DividerFields {...{ piece, fit, edits }} />;
  const set = (label: string, change: Partial<OnFloor>) =>
    edits.setPiece(label, { ...piece, fit: { ...fit, ...change } });
  const { holes } = fit;
  const setHoles = (shape: string) => {
    const { holes: _, ...plain } = fit;
    const found = HOLES.find((each) => each === shape) ?? 'none';
    edits.setPiece(words.holes, {
      ...piece,
      fit:
        found === 'none'
          ? plain
          : { ...fit, holes: { acrossMm: 19.05, columns: 1, rows: 1, ...holes, shape: found } },
    });
  };
  return (
    <>
      {piece.kind === 'raised-floor' && (
        <Length
          label={words.rise}
          help={words.riseHelp}
          mm={fit.riseMm}
          onChange={(riseMm) => set(words.rise, { riseMm })}
        />
      )}
      <Length
        label={words.ease}
        help={words.insertEaseHelp}
        mm={fit.easeMm}
        onChange={(easeMm) => set(words.ease, { easeMm })}
      />
      <SelectField
        label={words.holes}
        of={piece.name}
        value={holes?.shape ?? 'none'}
        choices={HOLES.map((id) => ({ id, label: words.holeShapes[id] }))}
        onChange={setHoles}
      />
      {holes && (
        <>
          <Length
            label={words.holeAcross}
            help={words.holeAcrossHelp}
            mm={holes.acrossMm}
            onChange={(acrossMm) => set(words.holeAcross, { holes: { ...holes, acrossMm } })}
          />
          <GridFields
            of={piece.name}
            grid={holes}
            least={1}
            onChange={(label, change) => set(label, { holes: { ...holes, ...change } })}
          />
        </>
      )}
    </>
  );
}

/** Both families of dividers change together: their slots have to meet. */
function DividerFields({ piece, fit, edits }: InsertFieldsProps & { readonly fit: Divides }) {
  const words = usePageWords().dressing;
  const set = (label: string, change: Parameters<typeof withCells>[1]) =>
    edits.dressing(label, (old) => withCells(old, change));
  return (
    <>
      <p className="field-note">{words.dividersTogether}</p>
      <GridFields of={piece.name} grid={fit} least={2} onChange={set} />
      <LengthField
        label={words.dividerHeight}
        help={words.dividerHeightHelp}
        value={ticksOfMm(fit.heightMm)}
        onChange={(length) => set(words.dividerHeight, { heightMm: mmOfTicks(length) })}
      />
      <Length
        label={words.ease}
        help={words.insertEaseHelp}
        mm={fit.easeMm}
        onChange={(easeMm) => set(words.ease, { easeMm })}
      />
    </>
  );
}

interface LengthProps {
  readonly label: string;
  readonly help: string;
  readonly mm: number;
  readonly onChange: (mm: number) => void;
}

const Length = ({ label, help, mm, onChange }: LengthProps) => (
  <LengthField
    label={label}
    help={help}
    value={ticksOfMm(mm)}
    least={NOTHING}
    onChange={(length: Ticks) => onChange(mmOfTicks(length))}
  />
);

const SIDES = ['columns', 'rows'] as const;

interface GridFieldsProps {
  readonly of: string;
  readonly grid: Readonly<Record<(typeof SIDES)[number], number>>;
  readonly least: number;
  readonly onChange: (label: string, change: Partial<GridFieldsProps['grid']>) => void;
}

/** How many stand left to right, and how many front to back. */
function GridFields({ of, grid, least, onChange }: GridFieldsProps) {
  const words = usePageWords().dressing;
  return SIDES.map((side) => (
    <div className="field" key={side}>
      <span className="field-name">{words[side]}</span>
      <CountStepper
        label={`${words[side]}: ${of}`}
        value={grid[side]}
        least={least}
        most={MOST_CELLS}
        onChange={(count) => onChange(words[side], { [side]: count })}
      />
    </div>
  ));
}
