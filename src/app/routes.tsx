import { createHashRouter, type RouteObject } from 'react-router';
import { Frame } from './frame';
import { PageBroken, PageNotFound } from './page-broken';
import { WorkbookFrame } from './workbook-frame';

/** Every page is loaded when it is first opened, so that the first one is there at once. */
const pages: RouteObject[] = [
  {
    path: 'box',
    lazy: async () => ({ Component: (await import('../screens/box/box-screen')).BoxScreen }),
  },
  {
    path: 'event',
    lazy: async () => ({ Component: (await import('../screens/event/event-screen')).EventScreen }),
  },
  {
    path: 'sheets',
    lazy: async () => ({ Component: (await import('../screens/sheets/sheets-screen')).SheetsScreen }),
  },
  {
    path: 'shopping',
    lazy: async () => ({ Component: (await import('../screens/shopping/shopping-screen')).ShoppingScreen }),
  },
  {
    path: 'bench',
    lazy: async () => ({ Component: (await import('../screens/bench/bench-screen')).BenchScreen }),
  },
].map((page) => ({ ...page, ErrorBoundary: PageBroken }));

export const routes: RouteObject[] = [
  {
    Component: Frame,
    ErrorBoundary: PageBroken,
    // Until the first page is there, the table it will lie on.
    HydrateFallback: () => null,
    children: [
      {
        index: true,
        lazy: async () => ({ Component: (await import('../screens/shelf/shelf-screen')).ShelfScreen }),
        ErrorBoundary: PageBroken,
      },
      {
        path: 'new',
        lazy: async () => ({
          Component: (await import('../screens/new-recipe/new-recipe-screen')).NewRecipeScreen,
        }),
        ErrorBoundary: PageBroken,
      },
      {
        path: 'stock/:table/:id',
        lazy: async () => ({ Component: (await import('../screens/stock/stock-screen')).StockScreen }),
        ErrorBoundary: PageBroken,
      },
      { path: ':kind/:id', Component: WorkbookFrame, children: pages },
      { path: '*', Component: PageNotFound },
    ],
  },
];

export const router = createHashRouter(routes);
