/** The faults that a report of the unit tests tells of. */
export const faultsOfUnits = (report) =>
  report.testResults.flatMap((file) => file.assertionResults).flatMap(({ meta }) => meta?.fault ?? []);

/** The faults that a report of the browser tests tells of: notes on its results. A try that lost too much counts, even where the next one did not. */
export function faultsOfBrowser({ suites = [] }) {
  const specsOf = (suite) => [...(suite.specs ?? []), ...(suite.suites ?? []).flatMap(specsOf)];
  return suites
    .flatMap(specsOf)
    .flatMap(({ tests }) => tests)
    .flatMap(({ results }) => {
      const tries = results.map(({ annotations = [] }) =>
        annotations.filter(({ type }) => type === 'fault').map(({ description }) => JSON.parse(description)),
      );
      return tries.find((told) => told.some(({ lost, goal }) => lost > goal)) ?? tries.at(-1) ?? [];
    });
}

/** What a report of the browser tests measured, a line each. */
export function measuredBy({ suites = [] }) {
  const specsOf = (suite) => [...(suite.specs ?? []), ...(suite.suites ?? []).flatMap(specsOf)];
  return suites
    .flatMap(specsOf)
    .flatMap(({ title, tests }) =>
      tests.flatMap(({ projectName, results }) =>
        (results.at(-1)?.annotations ?? [])
          .filter(({ type }) => type === 'measured')
          .map(({ description }) => `measured (${projectName}) ${title}: ${description}`),
      ),
    );
}

/** Faults as lines of a table: fault, tries, lost, goal; tests of one fault are added up. */
export function faultTable(faults) {
  const sums = new Map();
  for (const { fault, tries, lost, goal } of faults) {
    const sum = sums.get(fault) ?? { tries: 0, lost: 0, goal: 0 };
    sums.set(fault, { tries: sum.tries + tries, lost: sum.lost + lost, goal: sum.goal + goal });
  }
  if (sums.size === 0) return '';
  const told = [...sums].sort(([a], [b]) => (a < b ? -1 : 1));
  const rows = [
    ['fault', 'tries', 'lost', 'goal'],
    ...told.map(([fault, { tries, lost, goal }]) => [fault, `${tries}`, `${lost}`, `${goal}`]),
  ];
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.map((row) => row[column].length)));
  const print = (cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]));
  return rows.map((row) => row.map(print).join('  ')).join('\n');
}
