import { useMemo, useState } from 'react';
import {
  type FoldUnit,
  isUnitless,
  type LineChoice,
  type OwnReading,
  readOwnNet,
  sayFoldRefusal,
} from '../../core/net';
import { pickedText } from '../../state/intents/picked-text';
import { Button } from '../../ui/fields/button';
import { sizeWords, useRuler } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import { usePickingWords } from '../../ui/words/picking-words';
import { BringFile } from './bring-file';
import { OpenLines } from './open-lines';
import { OwnLines } from './own-lines';
import { RefusedFile } from './refused-file';

type OnMake = (ownNet: string, title: string) => void;
/** Longest file read. source: `ownNet` of the file format */
const MOST_LETTERS = 1_000_000;
const UNITS: readonly FoldUnit[] = ['mm', 'cm', 'in', 'pt', 'm', 'um'];

/** A net drawn elsewhere, brought in as a box: its open lines are asked about first. */
export function OwnNet({ onMake }: { onMake: OnMake }) {
  const words = usePickingWords();
  const [picked, setPicked] = useState<{ readonly text: string; readonly name: string } | null>(null);
  const pick = async (file: File) => {
    setPicked({ text: await pickedText(file, MOST_LETTERS), name: file.name.replace(/\.[^.]*$/, '') });
  };
  return (
    <BringFile
      id="own-net-head"
      title={words.ownNet}
      why={words.ownNetWhy}
      label={words.bringIn}
      accept=".fold,.json"
      onPick={(file) => void pick(file)}
    >
      {picked && (
        <PickedNet
          key={picked.text}
          text={picked.text}
          onMake={(ownNet, title) => onMake(ownNet, title || picked.name)}
          onLeave={() => setPicked(null)}
        />
      )}
    </BringFile>
  );
}

interface PickedNetProps {
  readonly text: string;
  readonly onMake: OnMake;
  readonly onLeave: () => void;
}

function PickedNet({ text, onMake, onLeave }: PickedNetProps) {
  const words = usePickingWords();
  const [unit, setUnit] = useState<FoldUnit>('mm');
  const [lines, setLines] = useState<Readonly<Record<string, LineChoice>>>({});
  const unitless = useMemo(() => isUnitless(text), [text]);
  const first = useMemo(() => readOwnNet(text, { lines: {}, unit }), [text, unit]);
  const reading = useMemo(() => readOwnNet(text, { lines, unit }), [text, lines, unit]);
  return (
    <div className="own-net-picked">
      {unitless && (
        <SelectField
          label={words.unit}
          help={words.unitHelp}
          value={unit}
          choices={UNITS.map((id) => ({ id, label: words.units[id] }))}
          onChange={(id) => setUnit(id as FoldUnit)}
        />
      )}
      {reading.is !== 'refused' && (
        <OwnLines lines={reading.lines} asked={first.is === 'asking' ? first.open : []} />
      )}
      {first.is === 'asking' && (
        <OpenLines
          open={first.open}
          said={lines}
          onSay={(name, choice) => setLines({ ...lines, [name]: choice })}
        />
      )}
      <Outcome reading={reading} />
      <div className="own-net-acts">
        {reading.is === 'net' && (
          <Button tone="act" onClick={() => onMake(reading.text, reading.title)}>
            {words.make}
          </Button>
        )}
        <Button tone="quiet" onClick={onLeave}>
          {words.leave}
        </Button>
      </div>
    </div>
  );
}

/** What has come of the file so far. */
function Outcome({ reading }: { reading: OwnReading }) {
  const words = usePickingWords();
  const ruler = useRuler();
  if (reading.is === 'refused')
    return <RefusedFile title={words.refused} refusals={reading.refusals} say={sayFoldRefusal} />;
  return (
    <p role="status">
      {reading.is === 'asking'
        ? words.stillOpen(reading.open.length)
        : words.ready(
            reading.pieces.map(
              ({ label, blank }) => `${label}, ${sizeWords([blank.across, blank.up], ruler)}`,
            ),
          )}
    </p>
  );
}
