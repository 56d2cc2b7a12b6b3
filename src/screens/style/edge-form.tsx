import { useState } from 'react';
import { addPanel } from '../../core/draft/add-panel';
import { setNotch } from '../../core/draft/openings';
import { usualPart } from '../../core/draft/parts/usual-part';
import { hangingOn, removePanel } from '../../core/draft/remove-panel';
import { hungOn, isSide } from '../../core/draft/sides';
import type { NamedSide } from '../../core/net/lay-piece';
import type { EdgeName, Role } from '../../core/styles';
import { roundToTick, type Ticks } from '../../core/units';
import { Button } from '../../ui/fields/button';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { EdgeShape } from './edge-shape';
import { FoldField } from './fold-field';
import { FormField } from './form-field';
import { usePanelNames } from './panel-names';
import { sidesOf } from './sides-of';
import type { EditorProps } from './style-editor';

/** What is asked for most, in the order a box is built. */
const USUAL = ['wall', 'glueTab', 'bottomFlap', 'lid', 'tuck', 'dustFlap'] as const satisfies readonly Role[];
const OTHERS = [
  'base',
  'roof',
  'gusset',
  'cover',
  'liner',
  'endFlap',
  'lockFlap',
  'handle',
  'hangTab',
] as const;

/** One edge: free, with what can be added there; or joined to a panel, and how it folds. */
export function EdgeForm({ box, open, edits, edge }: EditorProps & { readonly edge: string }) {
  const words = useDraftingWords();
  const names = usePanelNames();
  const ruler = useRuler();
  const [other, setOther] = useState<Role>('roof');
  const { place, make, take, select } = edits;
  const { piece, panel } = place;
  const of = open.draft.pieces?.[piece];
  const hung = of && hungOn(of, panel, edge);
  const add = (role: Role) =>
    make(words.changes.add(words.roles[role]), addPanel(piece, panel, edge as EdgeName, role));
  if (hung !== undefined && of !== undefined)
    return (
      <>
        <p>{words.meets(names.panel(hung))}</p>
        <FoldField place={{ piece, panel: hung }} draft={open.draft} edits={edits} />
        <div className="style-acts">
          <Button onClick={() => select({ piece, panel: hung })}>
            {words.selectPanel(names.panel(hung))}
          </Button>
          <Button
            tone="quiet"
            onClick={() => make(words.changes.remove(names.panel(hung)), removePanel(piece, hung))}
          >
            {words.removePanel(names.panel(hung), hangingOn(of, hung).size - 1)}
          </Button>
        </div>
      </>
    );
  const spec = of?.panels[panel];
  const notch =
    spec && 'notches' in spec ? (spec.notches ?? []).find((each) => each.edge === edge)?.radius : undefined;
  const usual = of ? usualPart(of, panel, edge) : null;
  const parts = [...USUAL].sort((a, b) => Number(b === usual) - Number(a === usual));
  const length = distanceOf(sidesOf(box, open.draft, piece), panel, edge);
  return (
    <>
      <p>{words.free(lengthWords(length, ruler))}</p>
      <div className="style-parts">
        {parts.map((role) => (
          <button
            key={role}
            type="button"
            className={role === usual ? 'style-part style-part-usual' : 'style-part'}
            onClick={() => add(role)}
          >
            <strong>{words.roles[role]}</strong>
            <span className="caption soft">
              {role === usual ? words.usualHere(words.roleHelp[role] ?? '') : words.roleHelp[role]}
            </span>
          </button>
        ))}
      </div>
      <div className="style-other">
        <SelectField
          label={words.more}
          value={other}
          choices={OTHERS.map((id) => ({ id, label: words.roles[id] }))}
          onChange={(id) => setOther(id as Role)}
        />
        <Button onClick={() => add(other)}>{words.addOther}</Button>
      </div>
      {of && (
        <EdgeShape key={`${panel}.${edge}`} of={of} place={place} edge={edge as EdgeName} edits={edits} />
      )}
      {isSide(edge) && (
        <Opening head={words.notchHead} open={notch !== undefined}>
          <FormField
            label={words.notch}
            help={words.notchHelp}
            value={notch ?? ''}
            onTake={(text) =>
              take(words.changes.change(names.panel(panel)), setNotch({ piece, panel }, edge, text))
            }
          />
        </Opening>
      )}
    </>
  );
}

/** How long an edge of a panel is as drawn. */
const distanceOf = (sides: readonly NamedSide[], panel: string, edge: string): Ticks =>
  roundToTick(
    sides.reduce(
      (sum, { panel: of, edge: named, a, b }) =>
        of === panel && named === edge ? sum + Math.hypot(b.x - a.x, b.y - a.y) : sum,
      0,
    ),
  );
