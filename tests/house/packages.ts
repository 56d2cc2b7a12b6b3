/** What the checks read of `package.json` and of one entry of the lock file. */
export interface Manifest {
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
}
interface LockedPackage {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
  readonly license?: string;
  readonly dev?: boolean;
}
export type LockedPackages = Readonly<Record<string, LockedPackage>>;

const SHIPPED = [
  'MIT',
  'ISC',
  '0BSD',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'MPL-2.0',
  'Zlib',
  'CC0-1.0',
];
/** Licences of things that only test or build, and never reach a maker. */
const BENCH_ONLY = [...SHIPPED, 'MIT-0', 'BlueOak-1.0.0', 'Python-2.0', 'CC-BY-4.0', 'OFL-1.1'];

/** Packages whose licence field needs a reader, with what was read. */
const READ_BY_HAND: readonly (readonly [name: RegExp, reason: string])[] = [
  [
    /^node_modules\/@img\/sharp-/,
    'LGPL image reader, an unused optional part of the mesh library the tests compare volumes with',
  ],
  [
    /^node_modules\/@sesamecare-oss\/redlock$/,
    'MIT by its LICENSE.md, though its manifest says UNLICENSED; loaded only where several share servers are joined',
  ],
  [/^node_modules\/splaytree-ts$/, 'BSD-3-Clause, misspelt in its manifest'],
];

/** What goes to a maker's browser, or runs at her desk, and why it is not our own. A new one is a decision: it is written down here. */
export const RUNTIME: Readonly<Record<string, string>> = {
  '@hocuspocus/extension-database': 'the share server’s way to its disk',
  '@hocuspocus/extension-redis': 'several share servers as one',
  '@hocuspocus/provider': 'a paired device’s line to the share server',
  '@hocuspocus/server': 'the share server',
  '@libsql/client': 'the share server’s database, an SQLite file',
  '@tanstack/react-virtual': 'lists of thousands of rows, of which only those in sight stand on the page',
  dexie: 'rows in the browser',
  fflate: 'links and embedded streams made small',
  highs: 'the cheapest mix of papers, fetched only when it is asked for',
  ics: 'the timetable for a calendar',
  jsep: 'formulas of a style file, read as a tree and never run; fetched only when one is read',
  jspdf: 'true-size PDF',
  'lucide-react': 'the signs on buttons',
  papaparse: 'guest lists from a spreadsheet, fetched only when one is read',
  react: 'the pages',
  'react-dom': 'the pages',
  'react-router': 'which page is open',
  three: 'the box in space',
  uqr: 'the square code of a link',
  'workbox-window': 'the app without a network',
  yjs: 'rows of several devices brought together',
  zod: 'reading what comes from outside',
  zustand: 'the state between the pages',
};

/** Versions that are not one exact version. */
export const loosePins = (manifest: Manifest): string[] =>
  Object.entries({ ...manifest.dependencies, ...manifest.devDependencies })
    .filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))
    .map(([name, version]) => `${name} ${version}`);

/** Entries that name a registry host, or that npm could not verify. */
export const unsafeLocks = (locked: LockedPackages): string[] =>
  Object.entries(locked)
    .filter(([path, entry]) => path !== '' && (entry.resolved !== undefined || entry.integrity === undefined))
    .map(([path]) => path);

/** Whether an SPDX expression is met by the allowed licences: any side of OR, every side of AND. */
function allows(expression: string, allowed: readonly string[]): boolean {
  const bare = expression.replace(/^\((.*)\)$/, '$1');
  if (bare.includes(' OR ')) return bare.split(' OR ').some((part) => allows(part, allowed));
  if (bare.includes(' AND ')) return bare.split(' AND ').every((part) => allows(part, allowed));
  return allowed.includes(bare);
}

/** Packages under a licence we do not take. What ships to a maker is held to the shorter list. */
export const foreignLicences = (locked: LockedPackages): string[] =>
  Object.entries(locked)
    .filter(([path]) => path !== '' && !READ_BY_HAND.some(([name]) => name.test(path)))
    .filter(([, entry]) => !allows(entry.license ?? 'none', entry.dev === true ? BENCH_ONLY : SHIPPED))
    .map(([path, entry]) => `${path}: ${entry.license ?? 'none'}`);
