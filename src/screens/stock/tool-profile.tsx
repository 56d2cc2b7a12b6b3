import { useState } from 'react';
import type { Tool } from '../../../shared/workbook';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { millimetres, readLength, spellLength, type Ticks, ticks } from '../../core/units';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { LengthField } from '../../ui/fields/length-field';
import { SelectField, TextField } from '../../ui/fields/text-field';
import { useWords } from '../../ui/words';

interface ToolProfileProps {
  readonly tool: Tool;
  readonly onChange: (label: string, change: Partial<Tool>) => void;
}

const MOST_GROOVES = 200;
const MOST_KERF = millimetres(5); // source: our own; a saw takes 3 mm

/** What the cards and the sheets ask of a tool beyond its marks: fixed grooves, a second scoring point, kerf, turns between cuts, the hand. */
export function ToolProfile({ tool, onChange }: ToolProfileProps) {
  const words = useWords().stock;
  return (
    <>
      {tool.kind === 'grooves' && <GrooveField tool={tool} onChange={onChange} />}
      <LengthField
        label={words.stylus}
        help={words.stylusHelp}
        value={ticksOfMm(tool.stylusMm ?? 0)}
        least={ticks(0)}
        onChange={(length) =>
          onChange(words.stylus, { stylusMm: length === 0 ? undefined : mmOfTicks(length) })
        }
      />
      <LengthField
        label={words.kerf}
        help={words.kerfHelp}
        value={ticksOfMm(tool.kerfMm ?? 0)}
        least={ticks(0)}
        most={MOST_KERF}
        onChange={(length) => onChange(words.kerf, { kerfMm: length === 0 ? undefined : mmOfTicks(length) })}
      />
      <SelectField
        label={words.turns}
        help={words.turnsHelp}
        value={`${tool.quarterTurns ?? 'any'}`}
        choices={[
          { id: 'any', label: words.turnsAny },
          { id: '2', label: words.turnsTwo },
          { id: '1', label: words.turnsOne },
        ]}
        onChange={(turns) =>
          onChange(words.turns, { quarterTurns: turns === 'any' ? undefined : turns === '1' ? 1 : 2 })
        }
      />
      <ChoiceStrip
        named
        label={words.hand}
        value={tool.leftHanded ? 'left' : 'right'}
        choices={[
          { id: 'right', label: words.rightHand },
          { id: 'left', label: words.leftHand },
        ]}
        onChange={(hand) => onChange(words.hand, { leftHanded: hand === 'left' })}
      />
    </>
  );
}

/** Grooves typed one after the other; what cannot be read is said and not kept. */
function GrooveField({ tool, onChange }: ToolProfileProps) {
  const words = useWords().stock;
  const [typed, setTyped] = useState<string | null>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  const kept = (tool.groovesMm ?? []).map((mm) =>
    spellLength(ticksOfMm(mm), tool.unit).replace(` ${tool.unit}`, ''),
  );
  const type = (text: string) => {
    setTyped(text);
    const grooves: Ticks[] = [];
    for (const part of text
      .split(';')
      .map((one) => one.trim())
      .filter(Boolean)) {
      const read = readLength(part, tool.unit, ticksOfMm(tool.finestMarkMm));
      if (!read.ok) {
        setWrong(`${read.reason} ${read.remedy}`);
        return;
      }
      if (read.length > 0) grooves.push(read.length);
    }
    setWrong(null);
    const once = [...new Set(grooves)].sort((a, b) => a - b).slice(0, MOST_GROOVES);
    onChange(words.groovesAt, { groovesMm: once.map(mmOfTicks) });
  };
  return (
    <TextField
      label={words.groovesAt}
      value={typed ?? kept.join('; ')}
      most={2000}
      onChange={type}
      help={wrong === null ? <p>{words.groovesHelp}</p> : <p className="field-refused">{wrong}</p>}
    />
  );
}
