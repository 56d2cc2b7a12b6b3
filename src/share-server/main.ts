import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { renderUnicodeCompact } from 'uqr';
import { readSettings } from './settings';
import { startShare } from './share-server';

const tell = (sentence: string) => void process.stdout.write(`${sentence}\n`);

async function main(): Promise<void> {
  const reading = readSettings(process.env);
  const faults = reading.ok
    ? existsSync(reading.settings.app)
      ? []
      : [`There is no built app in ${reading.settings.app}. Run npm run build.`]
    : reading.faults;
  if (!reading.ok || faults.length > 0) {
    for (const fault of faults) tell(fault);
    process.exitCode = 2;
    return;
  }
  const { settings } = reading;
  // The engine prints the names of shelves when a caller does wrong; nobody shall read them here.
  console.error = () => undefined;
  const server = await startShare({ ...settings, app: resolve(settings.app) }, tell);
  const address = settings.origin ?? `http://127.0.0.1:${server.port}`;
  tell(`\n${renderUnicodeCompact(address)}\n`);
  tell(`Crease & Count, with an exchange for your own devices: ${address}`);
  tell(`Shelves lie in ${settings.data}. Stop with Ctrl C.`);
  if (!address.startsWith('https:'))
    tell('A phone can join only at an https address. README says how to put one in front.');
  let stopping = false;
  const stop = () => {
    if (stopping) return;
    stopping = true;
    void server.close().then(() => process.exit(0));
  };
  process.on('SIGINT', stop);
  process.on('SIGTERM', stop);
}

try {
  await main();
} catch (error) {
  tell(`The server did not start: ${error instanceof Error ? error.message : String(error)}`);
  process.exitCode = 1;
}
