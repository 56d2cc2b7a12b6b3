/** The faults that a unit test report tells of, as lines of a table: fault, tries, lost, goal; tests of one fault are added up. */
export function faultTable(report) {
  const sums = new Map();
  for (const { meta } of report.testResults.flatMap((file) => file.assertionResults)) {
    if (!meta?.fault) continue;
    const { fault, tries, lost, goal } = meta.fault;
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
