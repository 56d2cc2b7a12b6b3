import { machine } from './machine';
import { suggestName } from './nearest-name';
import { readArguments } from './read-arguments';
import type { Desk, DeskRefusal, Verb } from './verb';

/** Each verb is loaded only when it is called, so that the desk is up at once. */
const VERBS: Readonly<Record<string, () => Promise<{ readonly verb: Verb }>>> = {
  styles: () => import('./styles'),
};

async function printHelp(desk: Desk): Promise<void> {
  const lines = await Promise.all(
    Object.entries(VERBS).map(async ([name, load]) => {
      const { verb } = await load();
      return `  ${name} ${verb.usage}\n      ${verb.answers}`;
    }),
  );
  desk.print(`npm run --silent desk -- VERB …\n\n${lines.join('\n')}\n
Lengths are written as a maker writes them: '3 1/2 in', 89mm, 8.9cm; a bare number is millimetres.
Leaves 0 when done, 2 when something was refused; the reasons are on standard error, the last line as JSON.`);
}

async function runDesk([name, ...words]: readonly string[], desk: Desk): Promise<readonly DeskRefusal[]> {
  if (name === undefined || name === 'help' || name === '--help' || words.includes('--help')) {
    await printHelp(desk);
    return [];
  }
  const load = Object.hasOwn(VERBS, name) ? VERBS[name] : undefined;
  if (!load) {
    const names = Object.keys(VERBS);
    const says = `“${name}” is not something the desk does. ${suggestName(name, names)}`;
    return [{ code: 'unknown-verb', path: name, found: name, expected: names.join(', '), says }];
  }
  const { verb } = await load();
  const given = readArguments(words, verb);
  return 'words' in given ? verb.run(given, desk) : given;
}

// A reader that has seen enough (`| head`) closes the pipe: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 1));

try {
  const refused = await runDesk(process.argv.slice(2), machine);
  if (refused.length > 0) {
    for (const { says } of refused) machine.tell(says);
    machine.tell(JSON.stringify({ refused: refused.map(({ says: _, ...refusal }) => refusal) }));
    process.exitCode = 2;
  }
} catch (error) {
  machine.tell(
    `The desk itself failed, not your input: ${error instanceof Error ? error.message : String(error)}`,
  );
  process.exitCode = 1;
}
