export const DATABASE_NAME = 'crease-and-count';

/** Where the rows of a database are counted a second time, outside it. */
export const censusKeyOf = (database: string): string => `${database}.census`;
