import { addPanel } from '../../../src/core/draft/add-panel';
import type { Edit } from '../../../src/core/draft/draft';
import { editStyle } from '../../../src/core/draft/edit-style';

/** Edits one after the other, each on the text that the one before it made. Throws where one is refused. */
export const drawn = (text: string, edits: readonly Edit[]): string =>
  edits.reduce((before, edit) => {
    const edited = editStyle(before, edit);
    if (!edited.ok) throw new Error(JSON.stringify(edited.refusals));
    return edited.text;
  }, text);

/** An open-top box on one wall: three more in a row, the tab that closes it, four bottom flaps. */
export const OPEN_TOP: readonly Edit[] = [
  addPanel('box', 'front', 'right', 'wall'),
  addPanel('box', 'left', 'right', 'wall'),
  addPanel('box', 'back', 'right', 'wall'),
  addPanel('box', 'right', 'right', 'glueTab'),
  addPanel('box', 'front', 'down', 'bottomFlap'),
  addPanel('box', 'left', 'down', 'bottomFlap'),
  addPanel('box', 'back', 'down', 'bottomFlap'),
  addPanel('box', 'right', 'down', 'bottomFlap'),
];

/** A tray on a floor: four walls, four corner tabs. */
export const TRAY: readonly Edit[] = [
  ...(['left', 'right', 'down', 'up'] as const).map((edge) => addPanel('box', 'base', edge, 'wall')),
  ...(['front', 'back'] as const).flatMap((wall) =>
    (['left', 'right'] as const).map((edge) => addPanel('box', wall, edge, 'glueTab')),
  ),
];

/** The same tray with a lid on its back wall: two ends and a tuck. */
export const HINGED_LID: readonly Edit[] = [
  ...TRAY,
  addPanel('box', 'back', 'up', 'lid'),
  addPanel('box', 'lid', 'left', 'dustFlap'),
  addPanel('box', 'lid', 'right', 'dustFlap'),
  addPanel('box', 'lid', 'up', 'tuck'),
];
