import { Suspense } from 'react';
import { Route, Routes } from 'react-router';
import { FirstVisit } from '../screens/shelf/first-visit';
import { Frame } from './frame';
import { PageNotFound } from './page-broken';
import {
  frontDoorPage,
  helpPage,
  keepingPage,
  newRecipePage,
  seasonPage,
  sentPage,
  shelfPage,
  stockPage,
  stylePage,
  visitingPage,
  workbookFrame,
  workbookPages,
} from './pages';

const visiting = (
  <Suspense fallback={null}>
    <visitingPage.Page />
  </Suspense>
);

/** Which page stands at which address. */
export function AppRoutes() {
  return (
    <Routes>
      <Route path="bench/:code" element={visiting} />
      <Route path="class/:code" element={visiting} />
      <Route element={<Frame />}>
        <Route index element={<FirstVisit shelf={(failed) => <shelfPage.Page exampleFailed={failed} />} />} />
        <Route path="start" element={<frontDoorPage.Page />} />
        <Route path="new" element={<newRecipePage.Page />} />
        <Route path="keeping" element={<keepingPage.Page />} />
        <Route path="join/:code" element={<keepingPage.Page />} />
        <Route path="season" element={<seasonPage.Page />} />
        <Route path="help" element={<helpPage.Page />} />
        <Route path="stock/:table/:id" element={<stockPage.Page />} />
        <Route path=":kind/:id" element={<workbookFrame.Page />}>
          {Object.entries(workbookPages).map(([name, { Page }]) => (
            <Route key={name} path={name} element={<Page />} />
          ))}
          <Route path="box/style" element={<stylePage.Page />} />
          <Route path="*" element={null} />
        </Route>
        <Route path=":sent" element={<sentPage.Page />} />
        <Route path="*" element={<PageNotFound />} />
      </Route>
    </Routes>
  );
}
