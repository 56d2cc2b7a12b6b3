import { lazy } from 'react';
import { Route, Routes } from 'react-router';
import { FirstVisit } from '../screens/shelf/first-visit';
import { Frame } from './frame';
import { PageNotFound } from './page-broken';

// Every page is fetched when it is first opened, so that the first one is there at once.
const ShelfScreen = lazy(async () => ({
  default: (await import('../screens/shelf/shelf-screen')).ShelfScreen,
}));
const NewRecipeScreen = lazy(async () => ({
  default: (await import('./picking-page')).PickingPage,
}));
const StockPage = lazy(async () => ({
  default: (await import('./stock-page')).StockPage,
}));
const KeepingPage = lazy(async () => ({ default: (await import('./keeping-page')).KeepingPage }));
const HelpPage = lazy(async () => ({ default: (await import('./help-page')).HelpPage }));
const WorkbookFrame = lazy(async () => ({ default: (await import('./workbook-frame')).WorkbookFrame }));
const BoxScreen = lazy(async () => ({ default: (await import('../screens/box/box-screen')).BoxScreen }));
const FoldScreen = lazy(async () => ({ default: (await import('../screens/fold/fold-screen')).FoldScreen }));
const EventScreen = lazy(async () => ({
  default: (await import('../screens/event/event-screen')).EventScreen,
}));
const SheetsScreen = lazy(async () => ({
  default: (await import('../screens/sheets/sheets-screen')).SheetsScreen,
}));
const ShoppingScreen = lazy(async () => ({
  default: (await import('../screens/shopping/shopping-screen')).ShoppingScreen,
}));
const BenchScreen = lazy(async () => ({
  default: (await import('../screens/bench/bench-screen')).BenchScreen,
}));

const ContentsScreen = lazy(async () => ({
  default: (await import('../screens/contents/contents-screen')).ContentsScreen,
}));
const MarksScreen = lazy(async () => ({
  default: (await import('../screens/marks/marks-screen')).MarksScreen,
}));
const DressingScreen = lazy(async () => ({
  default: (await import('../screens/dressing/dressing-screen')).DressingScreen,
}));
const HandoutScreen = lazy(async () => ({
  default: (await import('../screens/handout/handout-screen')).HandoutScreen,
}));
const SentScreen = lazy(async () => ({ default: (await import('../screens/sent/sent-screen')).SentScreen }));

/** Which page stands at which address. */
export function AppRoutes() {
  return (
    <Routes>
      <Route element={<Frame />}>
        <Route index element={<FirstVisit shelf={(failed) => <ShelfScreen exampleFailed={failed} />} />} />
        <Route path="new" element={<NewRecipeScreen />} />
        <Route path="keeping" element={<KeepingPage />} />
        <Route path="help" element={<HelpPage />} />
        <Route path="stock/:table/:id" element={<StockPage />} />
        <Route path=":kind/:id" element={<WorkbookFrame />}>
          <Route path="box" element={<BoxScreen />} />
          <Route path="fold" element={<FoldScreen />} />
          <Route path="event" element={<EventScreen />} />
          <Route path="sheets" element={<SheetsScreen />} />
          <Route path="shopping" element={<ShoppingScreen />} />
          <Route path="bench" element={<BenchScreen />} />
          <Route path="contents" element={<ContentsScreen />} />
          <Route path="marks" element={<MarksScreen />} />
          <Route path="dressing" element={<DressingScreen />} />
          <Route path="handout" element={<HandoutScreen />} />
          <Route path="*" element={null} />
        </Route>
        <Route path=":sent" element={<SentScreen />} />
        <Route path="*" element={<PageNotFound />} />
      </Route>
    </Routes>
  );
}
