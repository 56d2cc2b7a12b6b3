import { createContext, use } from 'react';
import { lengthWords } from '../../core/draw/strokes/length-text';
import { nearestMark, printLength, type Ruler, type Ticks, USUAL_FINEST } from '../../core/units';

/** The maker's own ruler: every length on the page is printed on its marks. */
export const RulerContext = createContext<Ruler>({ unit: 'in', finest: USUAL_FINEST.in });

export { lengthWords };

export const useRuler = (): Ruler => use(RulerContext);

/** `3½ × 1½ × 3 in`: several lengths that share one unit. */
export function sizeWords(lengths: readonly Ticks[], ruler: Ruler): string {
  const unit = ` ${ruler.unit}`;
  return `${lengths.map((length) => lengthWords(length, ruler).replace(unit, '')).join(' × ')}${unit}`;
}

/** The same on the nearest marks, without saying which way they lean: for a line that only helps to recognise. */
export const roughSize = (lengths: readonly Ticks[], ruler: Ruler): string =>
  sizeWords(
    lengths.map((length) => nearestMark(length, ruler.finest)),
    ruler,
  );

/** One length in the text, on the maker's marks; `both` adds the other unit in a softer ink. */
export function Length({ of, both = false }: { of: Ticks; both?: boolean }) {
  const ruler = useRuler();
  return (
    <span className="length">
      {lengthWords(of, ruler)}
      {both && <span className="soft"> {printLength(of, ruler).other}</span>}
    </span>
  );
}

/** Grid spacing of the mat under a drawing, in millimeters: one inch or one centimeter. */
export const matStepMm = (ruler: Ruler): number => (ruler.unit === 'in' ? 25.4 : 10);
