import type { FavorEvent, Tool, WorkbookFile } from '../../shared/workbook';

/** The tool an event is made with: its own, else the first of the file, as on its pages. */
export const toolOfEvent = (event: FavorEvent | undefined, { tools }: WorkbookFile): Tool | undefined =>
  tools.find(({ id }) => id === event?.toolId) ?? tools[0];

/** The tool for one box of a file: that of the first event that makes it. */
export const toolOfRecipe = (recipeId: string, file: WorkbookFile): Tool | undefined =>
  toolOfEvent(
    file.events.find(({ lines }) => lines.some((line) => line.recipeId === recipeId)),
    file,
  );
