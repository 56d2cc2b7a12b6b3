import { setFraction } from '../../units';

/** Plain fractions of a sentence as a printer sets them: `3 1/2 in` becomes `3½ in`. */
export const setFractions = (text: string): string =>
  text.replace(
    /(?<![\d/.])(?:(\d+) )?(\d{1,2})\/(2|3|4|8|16|32|64)(?![\d/])/g,
    (_, whole: string | undefined, over: string, under: string) =>
      `${whole ?? ''}${setFraction(Number(over), Number(under))}`,
  );
