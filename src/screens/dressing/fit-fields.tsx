import type { DressingPiece, PieceFit } from '../../../shared/workbook';
import { fitPiece } from '../../core/dress';
import type { BoxNet } from '../../core/net';
import { panelWords } from '../../core/net/panel-words';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { ticks } from '../../core/units';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { LengthField } from '../../ui/fields/length-field';
import { useRuler } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import { usePageWords, useSay } from '../../ui/words';
import type { DressingEdits } from './dressing-edits';
import { InsertFields } from './insert-fields';
import { findPanel, panelKey, visiblePanels } from './new-dressing';

interface FitFieldsProps {
  readonly piece: DressingPiece;
  readonly net: BoxNet;
  readonly edits: DressingEdits;
}

const RULES = ['on-panel', 'around', 'behind', 'over-window', 'own'] as const;
const WAYS = ['walls', 'front', 'sides'] as const;
const SIDES = ['left', 'right', 'up', 'down'] as const;
const NOTHING = ticks(0);

/** What a piece follows, and by how much: each rule with its own lengths; or a size of its own. */
export function FitFields({ piece, net, edits }: FitFieldsProps) {
  const words = usePageWords().dressing;
  const say = useSay();
  const ruler = useRuler();
  const { fit } = piece;
  const panels = visiblePanels(net, say);
  const panel = fit && 'panel' in fit ? fit.panel : (panels[0]?.panel ?? 'front');
  const setFit = (label: string, next: PieceFit) => edits.setPiece(label, { ...piece, fit: next });
  const setRule = (rule: string) => {
    const { fit: _, ...own } = piece;
    // A size of its own begins with what the piece was.
    const size = fitPiece(net, piece, ruler.finest);
    const sized = size ? { widthMm: mmOfTicks(size.across), heightMm: mmOfTicks(size.up) } : {};
    const found = RULES.find((each) => each === rule) ?? 'own';
    edits.setPiece(
      words.rule,
      found === 'own' ? { ...own, ...sized } : { ...piece, fit: begin(found, panel) },
    );
  };
  if (fit?.rule === 'divides' || fit?.rule === 'on-floor') return <InsertFields {...{ piece, fit, edits }} />;
  return (
    <>
      <SelectField
        label={words.rule}
        of={piece.name}
        value={fit?.rule ?? 'own'}
        choices={RULES.map((id) => ({ id, label: words.rules[id] }))}
        onChange={setRule}
      />
      {fit && 'panel' in fit && (
        <SelectField
          label={words.panel}
          of={piece.name}
          value={findPanel(panels, fit)?.key ?? panelKey(fit)}
          choices={[
            ...(findPanel(panels, fit) ? [] : [{ id: panelKey(fit), label: say(panelWords(fit.panel)) }]),
            ...panels.map(({ key, label }) => ({ id: key, label })),
          ]}
          onChange={(key) => {
            const found = panels.find((each) => each.key === key);
            if (found) setFit(words.panel, { ...fit, panel: found.panel, part: found.part });
          }}
        />
      )}
      {fit?.rule === 'on-panel' && <Reveals fit={fit} onChange={setFit} />}
      {fit?.rule === 'around' && <Around fit={fit} of={piece.name} onChange={setFit} />}
      {fit && 'lapMm' in fit && (
        <LengthField
          label={words.lap}
          help={words.lapHelp}
          value={ticksOfMm(fit.lapMm)}
          least={NOTHING}
          onChange={(length) => setFit(words.lap, { ...fit, lapMm: mmOfTicks(length) })}
        />
      )}
      {fit?.rule === 'behind' && <Behind fit={fit} onChange={setFit} />}
      {!fit && (
        <>
          <LengthField
            label={words.width}
            help={words.cutHelp}
            value={ticksOfMm(piece.widthMm)}
            onChange={(length) => edits.setPiece(words.width, { ...piece, widthMm: mmOfTicks(length) })}
          />
          <LengthField
            label={words.height}
            help={words.cutHelp}
            value={ticksOfMm(piece.heightMm)}
            onChange={(length) => edits.setPiece(words.height, { ...piece, heightMm: mmOfTicks(length) })}
          />
        </>
      )}
    </>
  );
}

/** source: common practice, no source: 1/8 in of reveal, 1/2 in of lap, 1/4 in behind an opening. */
function begin(rule: Exclude<(typeof RULES)[number], 'own'>, panel: string): PieceFit {
  switch (rule) {
    case 'on-panel':
      return { rule, panel, revealMm: 3.175 };
    case 'around':
      return { rule, heightMm: 25.4, lapMm: 12.7 };
    case 'behind':
      return { rule, aboveRimMm: 76.2, easeMm: 1.5875 };
    case 'over-window':
      return { rule, panel, lapMm: 6.35 };
  }
}

type OnPanel = Extract<PieceFit, { rule: 'on-panel' }>;

function Reveals({ fit, onChange }: { fit: OnPanel; onChange: (label: string, fit: OnPanel) => void }) {
  const words = usePageWords().dressing;
  const { sidesMm: sides, ...plain } = fit;
  const all = fit.revealMm;
  return (
    <>
      <ChoiceStrip
        named
        label={words.reveals}
        value={sides ? 'own' : 'one'}
        choices={[
          { id: 'one', label: words.oneReveal },
          { id: 'own', label: words.ownReveals },
        ]}
        onChange={(id) =>
          onChange(
            words.ownReveals,
            id === 'one' ? plain : { ...fit, sidesMm: { left: all, right: all, up: all, down: all } },
          )
        }
      />
      {!sides && (
        <LengthField
          label={words.reveal}
          help={words.revealHelp}
          value={ticksOfMm(all)}
          least={NOTHING}
          onChange={(length) => onChange(words.reveal, { ...fit, revealMm: mmOfTicks(length) })}
        />
      )}
      {sides &&
        SIDES.map((side) => (
          <LengthField
            key={side}
            label={words[side]}
            help={words.sideHelp}
            value={ticksOfMm(sides[side])}
            least={NOTHING}
            onChange={(length) =>
              onChange(words[side], { ...fit, sidesMm: { ...sides, [side]: mmOfTicks(length) } })
            }
          />
        ))}
    </>
  );
}

type AroundFit = Extract<PieceFit, { rule: 'around' }>;

interface AroundProps {
  readonly fit: AroundFit;
  readonly of: string;
  readonly onChange: (label: string, fit: AroundFit) => void;
}

function Around({ fit, of, onChange }: AroundProps) {
  const words = usePageWords().dressing;
  return (
    <>
      <SelectField
        label={words.way}
        of={of}
        value={fit.way ?? 'walls'}
        choices={WAYS.map((id) => ({ id, label: words.ways[id] }))}
        onChange={(id) => onChange(words.way, { ...fit, way: WAYS.find((way) => way === id) })}
      />
      <LengthField
        label={words.bandHeight}
        help={words.bandHeightHelp}
        value={ticksOfMm(fit.heightMm)}
        onChange={(length) => onChange(words.bandHeight, { ...fit, heightMm: mmOfTicks(length) })}
      />
    </>
  );
}

type BehindFit = Extract<PieceFit, { rule: 'behind' }>;

function Behind({ fit, onChange }: { fit: BehindFit; onChange: (label: string, fit: BehindFit) => void }) {
  const words = usePageWords().dressing;
  return (
    <>
      <LengthField
        label={words.aboveRim}
        help={words.aboveRimHelp}
        value={ticksOfMm(fit.aboveRimMm)}
        least={NOTHING}
        onChange={(length) => onChange(words.aboveRim, { ...fit, aboveRimMm: mmOfTicks(length) })}
      />
      <LengthField
        label={words.ease}
        help={words.easeHelp}
        value={ticksOfMm(fit.easeMm)}
        least={NOTHING}
        onChange={(length) => onChange(words.ease, { ...fit, easeMm: mmOfTicks(length) })}
      />
    </>
  );
}
