import type { FoldRefusal } from './read-fold';

/** Why a FOLD file cannot be taken as a net, in a sentence. */
export function sayFoldRefusal({ code, path, found, expected }: FoldRefusal): string {
  switch (code) {
    case 'not-fold':
      return `We can’t read this FOLD file: ${path === '' ? '' : `${path}, `}${found}.`;
    case 'unknown-unit':
      return `We don’t know its unit “${found}”. Use ${expected}.`;
    case 'no-such-vertex':
      return `A line ends at corner ${found}, which the file does not have.`;
    case 'unassigned-edge':
      return `Too many of its lines are left open (${found}, ${expected}). Say in the program that drew it which are cuts, valleys and mountains.`;
    case 'sign-differs':
      return `${path}: a line is marked ${found}°. A valley folds by a positive angle and a mountain by a negative one.`;
    case 'no-faces':
      return 'Its lines don’t enclose a panel.';
    case 'not-connected':
      return 'Its panels aren’t one piece joined by folds. Give each piece its own frame, and leave out lines with a loose end.';
    case 'lists-differ':
      return `${path} has ${found} entries, expected ${expected}.`;
    case 'folded-form':
      return 'It holds only a folded shape. Save the flat crease pattern instead.';
    case 'not-flat':
      return 'It isn’t flat. Save the flat crease pattern instead.';
    case 'too-small':
      return `It is ${found}, smaller than ${expected}. Check the unit.`;
    case 'too-big':
      return `It is ${found}, larger than ${expected}. Check the unit.`;
    case 'too-many-faces':
      return `It has ${found} panels; ${expected} can be folded here.`;
    case 'too-long':
      return `The file is too long: ${found}, ${expected}.`;
    case 'no-length':
      return `${path}: a line has no length. Both its ends lie at ${found}. Take it out in the program that drew it.`;
    case 'no-area':
      return `${path}: ${found} has no area. All its corners lie on one line. Take it out in the program that drew it.`;
    case 'too-many':
      return `${path === '' ? 'A list' : path} has ${found} entries; ${expected} can be read.`;
    case 'no-such-line':
      return `There is no line ${found} in this file.`;
  }
}
