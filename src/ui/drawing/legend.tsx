import { INKS } from '../../core/draw/strokes/inks';
import type { Drawing, Ink } from '../../core/draw/strokes/types';
import { useSay, useWords } from '../words';
import { InkSample } from './ink-sample';
import './line-table.css';

const SILENT: readonly Ink[] = ['paper', 'join', 'dimension', 'guide'];

/** What each kind of line in these drawings means; only the kinds that are there. */
export function Legend({ drawings }: { drawings: readonly Drawing[] }) {
  const words = useWords().drawing;
  const say = useSay();
  const there = new Set(
    drawings.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [] : mark.ink))),
  );
  const inks = (Object.keys(INKS) as Ink[]).filter((ink) => there.has(ink) && !SILENT.includes(ink));
  return (
    <ul className="legend" aria-label={words.legend}>
      {inks.map((ink) => (
        <li key={ink}>
          <InkSample ink={ink} /> {say(INKS[ink].means)}
        </li>
      ))}
    </ul>
  );
}
