import { useMemo, useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import type { Room } from '../../core/fit';
import type { Chosen } from '../../core/styles';
import { inches, millimetres, type Ticks, ticks } from '../../core/units';
import { type FamilyAsk, type MarksAsk, useFamily } from '../../state/results/fit-result';
import { useWorkbook } from '../../state/use-workbook';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { CountStepper } from '../../ui/fields/count-stepper';
import { LengthField } from '../../ui/fields/length-field';
import { useRuler } from '../../ui/fields/measure';
import { NumberField } from '../../ui/fields/number-field';
import { Opening } from '../../ui/frame/opening';
import { usePageWords } from '../../ui/words';
import { distinctNames } from './family-content';
import { FamilyFound } from './family-found';
import { FamilySheets } from './family-sheets';
import type { NamedSheet } from './marks-ask';

interface FamilyPanelProps {
  readonly recipe: Recipe;
  readonly need: Room;
  readonly sheet: NamedSheet;
  /** The way the box is constructed, which all members share. */
  readonly options: Chosen;
  /** The question of the page, whose tool, sheet and slack hold here too. */
  readonly base: MarksAsk;
}

const MOST = 5;
const AIR = { in: inches(0, 1, 8), mm: millimetres(3) } as const; // source: our own, as much as soft things get

/** The same box for another thing, or a family of sizes: what is asked, the sizes on easy marks, the sheet they share, and recipes made of them. */
export function FamilyPanel(props: FamilyPanelProps) {
  const words = usePageWords().marks;
  const [open, setOpen] = useState(false);
  return (
    <Opening head={<strong>{words.family}</strong>} open={open} onToggle={setOpen}>
      <p className="soft family-why">{words.familyWhy}</p>
      {open && <Family {...props} />}
    </Opening>
  );
}

function Family({ recipe, need, sheet, options, base }: FamilyPanelProps) {
  const words = usePageWords().marks;
  const ruler = useRuler();
  const [room, setRoom] = useState<Room>(need);
  const [members, setMembers] = useState(3);
  const [rule, setRule] = useState<'nested' | 'grown'>('nested');
  const [air, setAir] = useState<Ticks>(AIR[ruler.unit]);
  const [percent, setPercent] = useState(25);
  const ask = useMemo((): FamilyAsk => {
    const { styleIds: _, otherPapers: __, ...same } = base;
    return {
      ...same,
      styleId: recipe.styleId,
      held: {},
      heldOptions: options,
      need: room,
      members,
      rule: rule === 'nested' ? { rule, air } : { rule, percent },
    };
  }, [base, recipe.styleId, options, room, members, rule, air, percent]);
  const { members: found, busy } = useFamily(ask);
  const { names, fields, onName } = useNames(ask, recipe.name, found.length);
  const shared = { recipe, found, names, sheet };
  const side = (axis: 0 | 1 | 2) => (length: Ticks) =>
    setRoom([axis === 0 ? length : room[0], axis === 1 ? length : room[1], axis === 2 ? length : room[2]]);
  return (
    <div className="family">
      <div className="family-ask">
        {([0, 1, 2] as const).map((axis) => (
          <LengthField
            key={axis}
            label={words.roomSides[axis]}
            value={room[axis]}
            least={ticks(1)}
            onChange={side(axis)}
          />
        ))}
        <div className="field">
          <span className="field-name">{words.familyCount}</span>
          <CountStepper
            label={words.familyCount}
            value={members}
            least={1}
            most={MOST}
            onChange={setMembers}
          />
        </div>
        {members > 1 && <RuleFields {...{ rule, setRule, air, setAir, percent, setPercent }} />}
      </div>
      <p role="status">{busy ? words.familyBusy(found.length, members) : ''}</p>
      <FamilyFound {...shared} fields={fields} busy={busy} onName={onName} />
      {!busy && <FamilySheets {...shared} cutting={base.tool} />}
    </div>
  );
}

interface RuleFieldsProps {
  readonly rule: 'nested' | 'grown';
  readonly setRule: (rule: 'nested' | 'grown') => void;
  readonly air: Ticks;
  readonly setAir: (air: Ticks) => void;
  readonly percent: number;
  readonly setPercent: (percent: number) => void;
}

/** How one member follows from the next: nested with air between, or larger by a share. */
function RuleFields({ rule, setRule, air, setAir, percent, setPercent }: RuleFieldsProps) {
  const words = usePageWords().marks;
  return (
    <>
      <ChoiceStrip
        named
        label={words.familyRule}
        value={rule}
        choices={[
          { id: 'nested', label: words.nested },
          { id: 'grown', label: words.grown },
        ]}
        onChange={setRule}
      />
      {rule === 'nested' ? (
        <LengthField
          label={words.familyAir}
          help={words.familyAirHelp}
          value={air}
          least={ticks(0)}
          onChange={setAir}
        />
      ) : (
        <NumberField label={words.familyPercent} value={percent} least={1} most={200} onChange={setPercent} />
      )}
    </>
  );
}

/** What the members are called: as the maker typed, else as is usual, and none as a recipe on the shelf. */
function useNames(ask: FamilyAsk, name: string, count: number) {
  const words = usePageWords().marks;
  const shelf = useWorkbook((state) => state.rows.recipes);
  // A name belongs to one member of one family: another question begins with the usual ones.
  const [typed, setTyped] = useState<{
    readonly ask: FamilyAsk;
    readonly names: Readonly<Record<number, string>>;
  }>({
    ask,
    names: {},
  });
  const own = typed.ask === ask ? typed.names : {};
  const usual = Array.from({ length: count }, (_, place) => words.memberName(name, place, ask.members));
  const names = distinctNames(
    usual.map((each, place) => own[place]?.trim() || each),
    new Set([...shelf.values()].map((each) => each.name)),
  );
  return {
    names,
    fields: usual.map((each, place) => own[place] ?? each),
    onName: (place: number, typedName: string) => setTyped({ ask, names: { ...own, [place]: typedName } }),
  };
}
