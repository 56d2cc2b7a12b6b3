import { ITEMS } from '../../../shared/catalogue/items';
import { clearanceOf } from '../../core/fit';
import type { Contents } from '../../core/rows/contents';
import { mmOfTicks, ticksOfMm } from '../../core/rows/lengths';
import { ticks } from '../../core/units';
import { Button } from '../../ui/fields/button';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { LengthField } from '../../ui/fields/length-field';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import { usePageWords, useSay } from '../../ui/words';
import type { ContentsEdits } from './contents-edits';
import { ThingForm } from './thing-form';

const NONE = '';

/** The things of one box, and where more come from; the air round all of them. */
export function ThingsForm({ contents, edits }: { contents: Contents | undefined; edits: ContentsEdits }) {
  const words = usePageWords().contents;
  const say = useSay();
  const items = contents?.items ?? [];
  return (
    <form className="things" aria-labelledby="things-head" onSubmit={(event) => event.preventDefault()}>
      <h2 id="things-head">{words.things}</h2>
      {items.length === 0 && <p className="soft">{words.nothingYet}</p>}
      <ul className="things-list">
        {items.map((item) => (
          <ThingForm key={item.id} item={item} edits={edits} alone={items.length === 1} />
        ))}
      </ul>
      <SelectField
        label={words.pickThing}
        help={<p>{words.pickThingHelp}</p>}
        value={NONE}
        choices={[
          { id: NONE, label: words.pickNone },
          ...ITEMS.map(({ id, name }) => ({ id, label: say(name) })),
        ]}
        onChange={(id) => {
          const thing = ITEMS.find((one) => one.id === id);
          if (thing) edits.addFromList(thing);
        }}
      />
      <Button onClick={() => edits.addMeasured()}>{words.measureThing}</Button>
      {contents && items.length > 0 && <AirField contents={contents} edits={edits} />}
    </form>
  );
}

function AirField({ contents, edits }: { contents: Contents; edits: ContentsEdits }) {
  const words = usePageWords().contents;
  const ruler = useRuler();
  const air = clearanceOf(contents);
  const own = contents.clearanceMm !== null;
  return (
    <div className="air">
      <ChoiceStrip
        named
        label={words.air}
        value={own ? 'own' : 'usual'}
        choices={[
          { id: 'usual', label: words.airUsual },
          { id: 'own', label: words.airOwn },
        ]}
        onChange={(id) => edits.setAir(id === 'own' ? mmOfTicks(air.length) : null)}
      />
      {own ? (
        <LengthField
          label={words.air}
          value={ticksOfMm(contents.clearanceMm ?? 0)}
          least={ticks(0)}
          onChange={(length) => edits.setAir(mmOfTicks(length))}
        />
      ) : (
        <p className="soft">{words.airIs(lengthWords(air.length, ruler), words.airKinds[air.kind])}</p>
      )}
    </div>
  );
}
