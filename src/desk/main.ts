import { machine } from './machine';
import { runDesk } from './run-desk';

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
  const message = error instanceof Error ? error.message : String(error);
  machine.tell(`The desk itself failed, not your input: ${message}`);
  process.exitCode = 1;
}
