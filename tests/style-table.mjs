/** The checks of every box style that a unit test report tells of, as lines of a table: a row a style, a column a check, in each how many sizes were tried and the worst that was found. */
export function styleTable(report) {
  const rows = new Map();
  const checks = [];
  for (const { meta } of report.testResults.flatMap((file) => file.assertionResults)) {
    if (!meta?.style) continue;
    const { style, check, tried, worst } = meta.style;
    if (!checks.includes(check)) checks.push(check);
    rows.set(style, { ...rows.get(style), [check]: `${tried}: ${worst}` });
  }
  if (rows.size === 0) return '';
  const table = [
    ['style', ...checks],
    ...[...rows].map(([style, cells]) => [style, ...checks.map((check) => cells[check] ?? 'not asked')]),
  ];
  const widths = table[0].map((_, column) => Math.max(...table.map((row) => row[column].length)));
  return table
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column]))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
