/** The finished examples: one event, or a season of several. */
export type ExampleName = 'supper' | 'season';

/** Puts an example on the shelf and opens it; answers whether it could be fetched. */
export type OpenExample = (name: ExampleName) => Promise<boolean>;

/** What pages can do that needs the app around them. */
export interface ShelfDoors {
  readonly openExample: OpenExample;
}
