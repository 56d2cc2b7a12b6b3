import type { Tool } from '../../../shared/workbook';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { MARK_STEPS, millimetres, printLength, USUAL_FINEST } from '../../core/units';
import { useWorkbook } from '../../state/use-workbook';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { CountStepper } from '../../ui/fields/count-stepper';
import { LengthField } from '../../ui/fields/length-field';
import { SelectField, TextField } from '../../ui/fields/text-field';
import { useWords } from '../../ui/words';
import { ToolProfile } from './tool-profile';

const LEAST = millimetres(50);

/** A trimmer or scoring board: its marks, how far it reaches, how long it cuts, how many sheets at once. */
export function ToolForm({ tool }: { tool: Tool }) {
  const words = useWords().stock;
  const edit = useWorkbook((state) => state.edit);
  const set = (label: string, change: Partial<Tool>) =>
    void edit('tools', tool.id, label, (old) => ({ ...old, ...change }));
  const marks = MARK_STEPS[tool.unit].map((step) => ({
    id: `${mmOfTicks(step)}`,
    label: printLength(step, { unit: tool.unit, finest: step }).typographic,
  }));
  return (
    <form className="stock-form" onSubmit={(event) => event.preventDefault()}>
      <TextField label={words.name} value={tool.name} onChange={(name) => set(words.name, { name })} />
      <ChoiceStrip
        named
        label={words.toolKind}
        value={tool.kind}
        choices={[
          { id: 'fence', label: words.fence },
          { id: 'grooves', label: words.grooves },
        ]}
        onChange={(kind) => set(words.toolKind, { kind })}
      />
      <ChoiceStrip
        named
        label={words.toolUnit}
        value={tool.unit}
        choices={[
          { id: 'in', label: words.inches },
          { id: 'mm', label: words.millimetres },
        ]}
        onChange={(unit) => set(words.toolUnit, { unit, finestMarkMm: mmOfTicks(USUAL_FINEST[unit]) })}
      />
      <SelectField
        label={words.finestMark}
        value={`${tool.finestMarkMm}`}
        choices={marks}
        onChange={(mm) => set(words.finestMark, { finestMarkMm: Number(mm) })}
        help={words.finestMarkHelp}
      />
      <LengthField
        label={words.reach}
        help={words.reachHelp}
        value={ticksOfMm(tool.reachMm)}
        least={LEAST}
        onChange={(length) => set(words.reach, { reachMm: mmOfTicks(length) })}
      />
      <LengthField
        label={words.longestCut}
        value={ticksOfMm(tool.longestCutMm)}
        least={LEAST}
        onChange={(length) => set(words.longestCut, { longestCutMm: mmOfTicks(length) })}
      />
      <ToolProfile tool={tool} onChange={set} />
      <div className="field">
        <span className="field-name">{words.stack}</span>
        <CountStepper
          label={words.stack}
          value={tool.stack}
          least={1}
          most={50}
          onChange={(stack) => set(words.stack, { stack })}
        />
      </div>
    </form>
  );
}
