import { suggestName } from './nearest-name';
import { readArguments } from './read-arguments';
import { refuse } from './refuse';
import type { Desk, DeskRefusal, Verb } from './verb';

/** Each verb is loaded only when it is called, so that the desk is up at once. */
const VERBS: Readonly<Record<string, () => Promise<{ readonly verb: Verb }>>> = {
  styles: () => import('./styles'),
  prove: () => import('./prove'),
  net: () => import('./net'),
  card: () => import('./card'),
  handout: () => import('./handout'),
  fit: () => import('./fit'),
  vary: () => import('./vary'),
  beside: () => import('./beside'),
  plan: () => import('./plan'),
  yield: () => import('./yield'),
};

/** Does what one command line asks. Gives what it refused, in the order written: nothing when all was done. */
export async function runDesk(
  [name, ...words]: readonly string[],
  desk: Desk,
): Promise<readonly DeskRefusal[]> {
  if (name === undefined || name === '--help') {
    await printHelp(desk, Object.keys(VERBS));
    return [];
  }
  if (name === 'help') return runDesk([...words, '--help'], desk);
  const load = Object.hasOwn(VERBS, name) ? VERBS[name] : undefined;
  if (!load) {
    const names = Object.keys(VERBS);
    const says = `“${name}” is not a verb of this command. ${suggestName(name, names)}`;
    return [refuse('unknown-verb', name, name, names.join(', '), says)];
  }
  if (words.includes('--help')) {
    await printHelp(desk, [name]);
    return [];
  }
  const { verb } = await load();
  const given = readArguments(words, verb);
  return 'words' in given ? verb.run(given, desk) : given;
}

/** How these verbs are called and what they answer; then what holds for all of them. */
async function printHelp(desk: Desk, names: readonly string[]): Promise<void> {
  const verbs = await Promise.all(
    names.map(async (name) => {
      const loaded = await VERBS[name]?.();
      return loaded ? `  ${`${name} ${loaded.verb.usage}`.trim()}\n      ${loaded.verb.answers}` : '';
    }),
  );
  desk.print(`npm run --silent desk -- VERB …

${verbs.join('\n')}

Type lengths as you would write them: '3 1/2 in', 89mm, 8.9cm. A bare number is in --unit,
else in the unit of the file's tool, else in inches if any length says inches, else in millimeters.
Leaves 0 when done, 2 when something was refused; the reasons are on standard error, the last line as JSON.`);
}
