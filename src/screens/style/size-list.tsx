import { useState } from 'react';
import type { Draft } from '../../core/draft/draft';
import {
  addLimit,
  addSize,
  changeSize,
  removeLimit,
  removeSize,
  renameSize,
  setInside,
} from '../../core/draft/sizes';
import type { Ticks } from '../../core/units';
import { Button } from '../../ui/fields/button';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { SelectField, TextField } from '../../ui/fields/text-field';
import { Opening } from '../../ui/frame/opening';
import { useSay } from '../../ui/words';
import { useDraftingWords } from '../../ui/words/drafting-words';
import { among } from './among';
import { FormField } from './form-field';
import { ListRow } from './list-row';
import type { DraftEdits } from './use-draft';

interface SizeListProps {
  readonly draft: Draft;
  readonly edits: DraftEdits;
  readonly values: Readonly<Record<string, Ticks>>;
}

/** A size as it usually begins. source: our own */
const FIRST = { default: '1 in', min: '1/4 in', max: '6 in' } as const;

/** The sizes a maker of this box chooses, each with its limits; the room inside; and how sizes limit one another. */
export function SizeList({ draft, edits, values }: SizeListProps) {
  const words = useDraftingWords();
  const say = useSay();
  const [label, setLabel] = useState('');
  const { make, take } = edits;
  const rename = (name: string, to: string) => {
    const renamed = renameSize(name, to)(draft);
    const fresh = renamed.ok && Object.keys(renamed.draft.symbols).find((each) => !(each in draft.symbols));
    const also = fresh ? { renamed: { from: name, to: fresh } } : {};
    return take(words.changes.size(to), renameSize(name, to), also);
  };
  return (
    <Opening head={words.sizes}>
      <p className="soft">{words.sizesWhy}</p>
      <ul className="style-sizes">
        {Object.entries(draft.symbols).map(([name, symbol]) => (
          <li key={name}>
            <FormField
              label={words.name}
              help={words.shortName(name)}
              value={say(symbol.label)}
              most={80}
              onTake={(text) => rename(name, text)}
            />
            {(['default', 'min', 'max'] as const).map((field) => (
              <FormField
                key={field}
                label={field === 'default' ? words.usual : field === 'min' ? words.least : words.most}
                steps
                value={symbol[field]}
                onTake={(text) =>
                  take(
                    words.changes.size(symbol.label),
                    changeSize(name, { [field]: text.trim() }),
                    field === 'default' ? { usual: name } : {},
                  )
                }
              />
            ))}
            <Button tone="quiet" onClick={() => make(words.changes.size(symbol.label), removeSize(name))}>
              {words.takeOut(say(symbol.label))}
            </Button>
          </li>
        ))}
      </ul>
      <div className="style-other">
        <TextField
          label={words.newSize}
          help={words.newSizeHelp}
          value={label}
          most={80}
          onChange={setLabel}
        />
        <Button
          onClick={() => {
            if (make(words.changes.size(label), addSize(label.trim(), FIRST)).length === 0) setLabel('');
          }}
        >
          {words.addSize}
        </Button>
      </div>
      <h4>{words.inside}</h4>
      <p className="soft">{words.insideHelp}</p>
      <div className="style-three">
        {([0, 1, 2] as const).map((side) => (
          <FormField
            key={side}
            label={words.insideSides[side] ?? ''}
            value={draft.inside[side]}
            onTake={(text) => take(words.changes.inside, setInside(side, text))}
          />
        ))}
      </div>
      <LimitList draft={draft} edits={edits} values={values} />
    </Opening>
  );
}

function LimitList({ draft, edits: { make, take }, values }: SizeListProps) {
  const words = useDraftingWords();
  const say = useSay();
  const ruler = useRuler();
  const symbols = Object.keys(draft.symbols);
  const [symbol, setSymbol] = useState('');
  const [bound, setBound] = useState<'atLeast' | 'atMost'>('atMost');
  const of = among(symbol, symbols);
  const labelOf = (name: string) => say(draft.symbols[name]?.label ?? name);
  return (
    <>
      <h4>{words.limits}</h4>
      <p className="soft">{words.limitsWhy}</p>
      <ul className="style-rows">
        {draft.constraints.map(({ code, symbol: name, atLeast, atMost }) => {
          const kind = atMost === undefined ? 'atLeast' : 'atMost';
          const text = words.limit(labelOf(name), words.bounds[kind], atMost ?? atLeast ?? '');
          return (
            <ListRow key={code} text={text} onRemove={() => make(words.changes.limit, removeLimit(code))} />
          );
        })}
      </ul>
      <div className="style-three">
        <SelectField
          label={words.limitOf}
          value={of}
          choices={symbols.map((name) => ({ id: name, label: labelOf(name) }))}
          onChange={setSymbol}
          help={values[of] !== undefined && words.isNow(lengthWords(values[of], ruler))}
        />
        <SelectField
          label={words.bound}
          value={bound}
          choices={[
            { id: 'atMost', label: words.bounds.atMost },
            { id: 'atLeast', label: words.bounds.atLeast },
          ]}
          onChange={(id) => setBound(id === 'atLeast' ? id : 'atMost')}
        />
        <FormField
          label={words.limitForm}
          help={words.limitFormHelp}
          value=""
          onTake={(text) => (text.trim() === '' ? [] : take(words.changes.limit, addLimit(of, bound, text)))}
        />
      </div>
    </>
  );
}
