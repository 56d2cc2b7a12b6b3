import { saveAs } from '../../ui/frame/save-as';

/** A text to the maker's downloads. */
export const saveText = (name: string, text: string): void =>
  saveAs(name, 'json', new Blob([text], { type: 'application/json' }));
