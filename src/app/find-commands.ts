import type { CommandWords } from '../ui/words/english/commands';
import type { Command } from './commands';

/** A command that was found, and by which other words where its own do not hold what was typed. */
export interface FoundCommand {
  readonly command: Command;
  readonly by: readonly string[];
}

/**
 * Those whose words, or whose other words, hold every word that was typed, in any order. First those it begins a word of, then those it
 * stands somewhere in, then those found by another word.
 */
export function findCommands(
  commands: readonly Command[],
  typed: string,
  also: CommandWords['also'],
): readonly FoundCommand[] {
  const wanted = wordsIn(typed);
  const found = commands.flatMap((command) => {
    const says = command.says.toLowerCase();
    const others = command.also ? wordsIn(also[command.also]) : [];
    const own = wordsIn(command.says);
    let rank = 0;
    const by: string[] = [];
    for (const word of wanted) {
      if (own.some((each) => each.startsWith(word))) continue;
      if (says.includes(word)) {
        rank = Math.max(rank, 1);
        continue;
      }
      const other = others.find((each) => each.startsWith(word));
      if (other === undefined) return [];
      rank = 2;
      by.push(other);
    }
    return [{ command, by, rank }];
  });
  return found.sort((a, b) => a.rank - b.rank);
}

const wordsIn = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[\s,]+/)
    .filter(Boolean);
