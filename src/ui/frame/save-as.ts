import { fileStem } from '../../core/rows/text';
import type { MadeFile } from './printer';

/** A maker’s name for it as a file name. */
export const fileName = (name: string, ending: string): string =>
  `${fileStem(name, 'crease-and-count')}.${ending}`;

/** Hands a file to the browser's own download. */
export function saveAs(name: string, ending: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName(name, ending);
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** A document goes to the browser's viewer, which prints it; any other file is downloaded. */
export const handOver = ({ name, ending, content }: MadeFile): void =>
  (ending === 'pdf' ? openInTab : saveAs)(name, ending, content);

/** Opens a document in a tab of its own, where the browser's viewer prints it; a download where it will not open one. */
function openInTab(name: string, ending: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const tab = window.open(address, '_blank');
  if (tab === null) saveAs(name, ending, content);
  setTimeout(() => URL.revokeObjectURL(address), 600_000);
}
