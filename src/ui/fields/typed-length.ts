import { useState } from 'react';
import {
  isOnMark,
  type LengthUnit,
  markAbove,
  markBelow,
  printLength,
  type ReadLength,
  type Ruler,
  readLength,
  readSizes,
  spellLength,
  type Ticks,
  ticks,
} from '../../core/units';
import { useWords, type Words } from '../words';
import { lengthWords, sizeWords, useRuler } from './measure';

/** A longer stride along the ruler, with Shift: 1/2 in, 10 mm. */
const STRIDE: Readonly<Record<LengthUnit, Ticks>> = { in: ticks(4064), mm: ticks(3200) };

interface Bounds {
  readonly least?: Ticks;
  readonly most?: Ticks;
}

/** The fields that one stands among, in the order shown, with what each holds now: a size of several lengths, pasted into any of them, fills them all. */
export interface SizesTogether {
  readonly fields: readonly (Bounds & { readonly label: string; readonly value: Ticks })[];
  readonly onAll: (lengths: readonly Ticks[]) => void;
}

interface TypedLengthProps extends Bounds {
  readonly value: Ticks;
  readonly onChange: (length: Ticks) => void;
  readonly onCommit?: () => void;
  readonly together?: SizesTogether | undefined;
}

/** What is said under the field once they have left it. */
export type FieldNote =
  | { readonly kind: 'refused' | 'between'; readonly says: string; readonly offer: Ticks | null }
  | { readonly kind: 'heard'; readonly says: string; readonly offer: null };

/** What they are typing: the text, the length it stood for when kept, and whether they have left the field. */
interface Draft {
  readonly text: string;
  readonly keptFor: Ticks;
  readonly left: boolean;
}

/** The text of a length field and everything that follows from it; the length itself lives with the caller. */
export function useTypedLength({ value, onChange, onCommit, together, ...bounds }: TypedLengthProps) {
  const ruler = useRuler();
  const words = useWords().field;
  const [draft, setDraft] = useState<Draft | null>(null);
  const [before, setBefore] = useState(value);
  const [filled, setFilled] = useState<readonly Ticks[] | null>(null);

  // An undo, a mend or another field may change the length: then the draft is old paper.
  const live = draft !== null && draft.keptFor === value ? draft : null;
  const spelled = spellLength(value, ruler.unit).replace(` ${ruler.unit}`, '');
  const text = live?.text ?? spelled;
  const read = live === null ? null : readAll(live.text, ruler, bounds, together, words);

  const put = (length: Ticks, kept: Draft | null) => {
    setDraft(kept);
    if (length !== value) onChange(length);
  };

  /** Fills every field where the text is a size for all of them; whether it was. */
  const fillAll = (typed: string): boolean => {
    const lengths = together && severalIn(typed, ruler);
    if (!lengths || readTogether(lengths, ruler, together, words) !== null) return false;
    setDraft(null);
    setFilled(lengths);
    together.onAll(lengths);
    return true;
  };

  return {
    text,
    typedUnit: read?.ok === true && read.heard.unit !== ruler.unit ? ('' as const) : null,
    echo: echoOf(value, read, live, ruler, words),
    note:
      live?.left === true && read !== null
        ? noteOf(live.text, read, ruler, words)
        : live === null && filled !== null && together?.fields.every((each, i) => each.value === filled[i])
          ? filledNote(filled, together, ruler, words)
          : null,

    /** `pasted`: all at once, so that a size of several lengths is whole. */
    type(typed: string, pasted = false) {
      if (live === null || live.left) setBefore(value);
      setFilled(null);
      if (pasted && fillAll(typed)) return;
      const heard = readWithin(typed, ruler, bounds, words);
      const length = heard.ok ? heard.length : value;
      put(length, { text: typed, keptFor: length, left: pasted && severalIn(typed, ruler) !== null });
    },
    commit() {
      if (live !== null && !fillAll(live.text)) {
        const plain = read?.ok === true && read.heard.unit === ruler.unit && read.heard.echo === null;
        setDraft(plain && isOnMark(read.length, ruler.finest) ? null : { ...live, left: true });
      }
      onCommit?.();
    },
    restore() {
      put(live === null || live.left ? value : before, null);
    },
    step(way: 1 | -1, far: boolean) {
      const step = far ? STRIDE[ruler.unit] : ruler.finest;
      const from = ticks(value + way);
      put(within(way > 0 ? markAbove(from, step) : markBelow(from, step), bounds), null);
    },
    accept(length: Ticks | null) {
      if (length !== null) put(length, null);
      onCommit?.();
    },
  };
}

type Reading =
  | (ReadLength & { readonly ok: true })
  | { readonly ok: false; readonly says: string; readonly offer: Ticks | null };

/** Reads the text, and refuses what lies outside the bounds with the bound as remedy. */
function readWithin(text: string, ruler: Ruler, bounds: Bounds, words: Words['field']): Reading {
  const read = readLength(text, ruler.unit, ruler.finest);
  if (!read.ok) return { ok: false, says: `${read.reason} ${read.remedy}`, offer: null };
  const says = boundSays(read.length, bounds, ruler, words);
  return says === null ? read : { ok: false, says, offer: within(read.length, bounds) };
}

function boundSays(length: Ticks, bounds: Bounds, ruler: Ruler, words: Words['field']): string | null {
  const bound = within(length, bounds);
  if (bound === length) return null;
  const [said, limit] = [lengthWords(length, ruler), lengthWords(bound, ruler)];
  return bound > length ? words.tooShort(said, limit) : words.tooLong(said, limit);
}

/** Several lengths written as one size; null where it is one length or none. */
function severalIn(text: string, { unit }: Ruler): readonly Ticks[] | null {
  const lengths = readSizes(text, unit);
  return lengths !== null && lengths.length > 1 ? lengths : null;
}

/** Why a size cannot fill the fields: as many lengths as fields, each within its bounds. Null: it can. */
function readTogether(
  lengths: readonly Ticks[],
  ruler: Ruler,
  { fields }: SizesTogether,
  words: Words['field'],
): string | null {
  if (lengths.length !== fields.length)
    return words.otherCount(lengths.length, fields.map(({ label }) => label).join(', '));
  for (const [i, { label, ...bounds }] of fields.entries()) {
    const length = lengths[i] ?? ticks(0);
    const says = boundSays(length, bounds, ruler, words);
    if (says !== null) return `${label}: ${says}`;
  }
  return null;
}

function readAll(
  text: string,
  ruler: Ruler,
  bounds: Bounds,
  together: SizesTogether | undefined,
  words: Words['field'],
): Reading {
  const lengths = together && severalIn(text, ruler);
  const says = lengths && readTogether(lengths, ruler, together, words);
  return says ? { ok: false, says, offer: null } : readWithin(text, ruler, bounds, words);
}

const filledNote = (
  lengths: readonly Ticks[],
  { fields }: SizesTogether,
  ruler: Ruler,
  words: Words['field'],
): FieldNote => ({
  kind: 'heard',
  says: words.filled(sizeWords(lengths, ruler), fields.map(({ label }) => label).join(', ')),
  offer: null,
});

const within = (length: Ticks, { least, most }: Bounds): Ticks =>
  least !== undefined && length < least ? least : most !== undefined && length > most ? most : length;

/** Beside the label, while they type: the other unit, or the whole reading where a slip looks the same. */
function echoOf(value: Ticks, read: Reading | null, live: Draft | null, ruler: Ruler, words: Words['field']) {
  if (live !== null && read?.ok === false) return { text: words.notYet, strong: false };
  const { other } = printLength(value, ruler);
  const strong = read?.ok === true && read.heard.echo !== null;
  return {
    text: strong ? `${lengthWords(value, ruler)} ${other.startsWith('≈') ? '' : '= '}${other}` : other,
    strong,
  };
}

function noteOf(text: string, read: Reading, ruler: Ruler, words: Words['field']): FieldNote | null {
  if (!read.ok) return { kind: 'refused', says: read.says, offer: read.offer };
  const said = lengthWords(read.length, ruler);
  if (read.heard.echo !== null)
    return { kind: 'heard', says: words.heard[read.heard.echo](text, said), offer: null };
  if (isOnMark(read.length, ruler.finest)) return null;
  const mark = read.heard.nearestMark;
  const off = printLength(ticks(Math.abs(read.length - mark)), { unit: 'mm', finest: ticks(32) }).text;
  return { kind: 'between', says: words.between(off, mark > read.length), offer: mark };
}
