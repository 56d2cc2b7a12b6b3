import './swatch.css';

/** A cut square of the paper's own color; the name beside it carries the meaning. */
export function Swatch({ colour, large = false }: { colour: string; large?: boolean }) {
  return (
    <span
      className={large ? 'swatch swatch-large' : 'swatch'}
      style={{ backgroundColor: colour }}
      aria-hidden="true"
    />
  );
}
