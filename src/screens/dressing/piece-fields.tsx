import type { DressingPiece } from '../../../shared/workbook';
import type { BoxNet } from '../../core/net';
import { USUAL_STRIPS } from '../../core/plan/supplies/plan-tape';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { type Ticks, ticks } from '../../core/units';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { CountStepper } from '../../ui/fields/count-stepper';
import { LengthField } from '../../ui/fields/length-field';
import { SelectField, TextField } from '../../ui/fields/text-field';
import { usePageWords, useSay } from '../../ui/words';
import type { DressingEdits } from './dressing-edits';
import { FitFields } from './fit-fields';
import { findPanel, visiblePanels } from './new-dressing';

const GRAINS = ['free', 'along-width', 'along-height'] as const;
const SHAPES = ['rectangle', 'rounded', 'circle', 'banner'] as const;

interface PieceFieldsProps {
  readonly piece: DressingPiece;
  readonly net: BoxNet;
  readonly edits: DressingEdits;
}

/** Everything that can be changed about one cut piece. */
export function PieceFields({ piece, net, edits }: PieceFieldsProps) {
  const words = usePageWords().dressing;
  const papers = useWorkbook((state) => state.rows.papers);
  const set = (label: string, change: Partial<DressingPiece>) =>
    edits.setPiece(label, { ...piece, ...change });
  return (
    <div className="dressing-fields">
      <TextField
        label={words.pieceName}
        value={piece.name}
        onChange={(name) => set(words.pieceName, { name })}
      />
      <FitFields piece={piece} net={net} edits={edits} />
      {(piece.kind === 'tag' || piece.shape !== undefined) && (
        <SelectField
          label={words.shape}
          of={piece.name}
          value={piece.shape ?? 'rectangle'}
          choices={SHAPES.map((id) => ({ id, label: words.shapes[id] }))}
          onChange={(id) => set(words.shape, { shape: SHAPES.find((shape) => shape === id) })}
        />
      )}
      {!piece.fit && <PlaceFields {...{ piece, net, edits }} />}
      <SelectField
        label={words.paper}
        of={piece.name}
        value={piece.paperId ?? ''}
        choices={[
          { id: '', label: words.boxPaper },
          ...ownOf(papers, piece.paperId).map(({ id, name }) => ({ id, label: name })),
        ]}
        onChange={(id) => set(words.paper, { paperId: id === '' ? null : id })}
      />
      <SelectField
        label={words.grain}
        of={piece.name}
        value={piece.grain}
        choices={GRAINS.map((id) => ({ id, label: words.grains[id] }))}
        onChange={(id) => set(words.grain, { grain: GRAINS.find((grain) => grain === id) ?? 'free' })}
      />
      {/* dividers count themselves by their cells */}
      {piece.fit?.rule !== 'divides' && (
        <div className="field">
          <span className="field-name">{words.perBox}</span>
          <CountStepper
            label={`${words.perBox}: ${piece.name}`}
            value={piece.perBox}
            least={1}
            most={100}
            onChange={(perBox) => set(words.perBox, { perBox })}
          />
        </div>
      )}
      <div className="field">
        <span className="field-name">{words.strips}</span>
        <CountStepper
          label={`${words.strips}: ${piece.name}`}
          value={piece.strips ?? USUAL_STRIPS[piece.kind]}
          most={20}
          onChange={(strips) => set(words.strips, { strips })}
        />
        <p className="field-note">{words.stripsHelp}</p>
      </div>
    </div>
  );
}

const NOTHING = ticks(0);

/** Where a tag or label is stuck on. */
function PlaceFields({ piece, net, edits }: PieceFieldsProps) {
  const words = usePageWords().dressing;
  const say = useSay();
  const { placed } = piece;
  const panels = visiblePanels(net, say);
  const put = (key: string) => {
    const { placed: _, ...loose } = piece;
    const found = panels.find((each) => each.key === key);
    const at = { leftMm: placed?.leftMm ?? 0, downMm: placed?.downMm ?? 0 };
    edits.setPiece(
      words.placeOn,
      found ? { ...piece, placed: { ...at, panel: found.panel, part: found.part } } : loose,
    );
  };
  const far = (name: 'leftMm' | 'downMm', label: string) =>
    placed && (
      <LengthField
        label={label}
        help={words.placeHelp}
        value={ticksOfMm(placed[name])}
        least={NOTHING}
        onChange={(length: Ticks) =>
          edits.setPiece(label, { ...piece, placed: { ...placed, [name]: mmOfTicks(length) } })
        }
      />
    );
  return (
    <>
      <SelectField
        label={words.placeOn}
        of={piece.name}
        value={placed ? (findPanel(panels, placed)?.key ?? '') : ''}
        choices={[{ id: '', label: words.nowhere }, ...panels.map(({ key, label }) => ({ id: key, label }))]}
        onChange={put}
      />
      {far('leftMm', words.fromLeft)}
      {far('downMm', words.fromBottom)}
    </>
  );
}
