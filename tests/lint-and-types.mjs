/**
 * Lints the named files and folders, and checks their types in the same breath: `node tests/lint-and-types.mjs src shared`.
 * One program serves both, since reading all files and working out their types is most of what either takes.
 * Leaves 0 if neither finds anything. `npm run types` and `npm run lint` say the same apart.
 */
import { join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ESLint } from 'eslint';
import ts from 'typescript';

const root = fileURLToPath(new URL('..', import.meta.url));
const places = process.argv.slice(2).map((place) => resolve(root, place));

const { options, fileNames, errors } = ts.getParsedCommandLineOfConfigFile(
  join(root, 'tsconfig.json'),
  undefined,
  {
    ...ts.sys,
    onUnRecoverableConfigFileDiagnostic: (problem) => {
      throw new Error(ts.flattenDiagnosticMessageText(problem.messageText, '\n'));
    },
  },
);
const program = ts.createProgram(fileNames, options);

const within = ({ fileName }) =>
  places.some((place) => fileName === place || fileName.startsWith(place + sep));
const problems = [
  ...errors,
  ...program.getOptionsDiagnostics(),
  ...program.getGlobalDiagnostics(),
  ...program
    .getSourceFiles()
    .filter(within)
    .flatMap((file) => [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)]),
];
if (problems.length > 0)
  console.log(
    ts.formatDiagnostics(problems, {
      getCanonicalFileName: (name) => name,
      getCurrentDirectory: () => root,
      getNewLine: () => '\n',
    }),
  );

const eslint = new ESLint({
  cwd: root,
  overrideConfigFile: join(root, 'tests/eslint.config.js'),
  overrideConfig: {
    files: ['**/*.{ts,tsx}'],
    languageOptions: { parserOptions: { programs: [program] } },
  },
});
const results = await eslint.lintFiles(places.map((place) => relative(root, place)));
const faults = results.some(({ errorCount, warningCount }) => errorCount + warningCount > 0);
if (faults) console.log(await (await eslint.loadFormatter('stylish')).format(results));
process.exitCode = problems.length > 0 || faults ? 1 : 0;
