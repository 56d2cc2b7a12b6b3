import { fetchedPage } from './fetched-page';

// Every page is fetched when it is first opened, so that the first one is there at once.
export const shelfPage = fetchedPage(async () => (await import('../screens/shelf/shelf-screen')).ShelfScreen);
export const frontDoorPage = fetchedPage(async () => (await import('./front-door-page')).FrontDoorPage);
export const newRecipePage = fetchedPage(async () => (await import('./picking-page')).PickingPage);
export const stockPage = fetchedPage(async () => (await import('./stock-page')).StockPage);
export const keepingPage = fetchedPage(async () => (await import('./keeping-page')).KeepingPage);
export const seasonPage = fetchedPage(async () => (await import('./season-page')).SeasonPage);
export const helpPage = fetchedPage(async () => (await import('./help-page')).HelpPage);
export const stylePage = fetchedPage(async () => (await import('./style-page')).StylePage);
export const sentPage = fetchedPage(async () => (await import('../screens/sent/sent-screen')).SentScreen);
/** What a link to one event shows to helpers and learners. */
export const visitingPage = fetchedPage(async () => (await import('./visiting-page')).VisitingPage);
export const workbookFrame = fetchedPage(async () => (await import('./workbook-frame')).WorkbookFrame);
export const workbookName = fetchedPage(async () => (await import('./workbook-name')).WorkbookName);

/** The pages of a workbook, by the last part of their address. */
export const workbookPages = {
  box: fetchedPage(async () => (await import('../screens/box/box-screen')).BoxScreen),
  fold: fetchedPage(async () => (await import('../screens/fold/fold-screen')).FoldScreen),
  event: fetchedPage(async () => (await import('../screens/event/event-screen')).EventScreen),
  sheets: fetchedPage(async () => (await import('../screens/sheets/sheets-screen')).SheetsScreen),
  shopping: fetchedPage(async () => (await import('../screens/shopping/shopping-screen')).ShoppingScreen),
  bench: fetchedPage(async () => (await import('../screens/bench/bench-screen')).BenchScreen),
  contents: fetchedPage(async () => (await import('../screens/contents/contents-screen')).ContentsScreen),
  marks: fetchedPage(async () => (await import('../screens/marks/marks-screen')).MarksScreen),
  dressing: fetchedPage(async () => (await import('../screens/dressing/dressing-screen')).DressingScreen),
  handout: fetchedPage(async () => (await import('../screens/handout/handout-screen')).HandoutScreen),
};

/** Fetches a page of a workbook and what stands round it; a name of no page fetches only that. */
export const fetchWorkbookPage = (name: string): Promise<unknown> =>
  Promise.all([
    workbookFrame.fetch(),
    workbookName.fetch(),
    Object.entries(workbookPages)
      .find(([page]) => page === name)?.[1]
      .fetch(),
  ]);
