const ROOMS = ['demo-data', 'public', 'shared', 'src', 'tests'];
const PAPERS = [
  'DEVELOPERS.md',
  'README.md',
  'package-lock.json',
  'package.json',
  'tsconfig.json',
  'vite.config.ts',
];

/** What lies at the top level and should not, and what should and does not. Dot-files may come and go; `made` are the build's own. */
export function topLevelFaults(found: readonly string[], made: readonly string[]): string[] {
  const wanted = [...ROOMS, ...PAPERS];
  const seen = found.filter((name) => !name.startsWith('.') && !made.includes(name));
  return [
    ...seen
      .filter((name) => !wanted.includes(name))
      .map((name) => `${name} does not belong at the top level`),
    ...wanted.filter((name) => !seen.includes(name)).map((name) => `${name} is missing`),
  ];
}
