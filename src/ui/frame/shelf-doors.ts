/** What the shelf can do that needs the browser around it: supplied by the app. */
export interface ShelfDoors {
  /** The text of the demo's file, or null where it cannot be fetched. */
  readonly fetchDemo: () => Promise<string | null>;
  /** Fetches the page the demo opens on, so that it is drawn in one go. */
  readonly fetchExamplePage: () => Promise<unknown>;
}
