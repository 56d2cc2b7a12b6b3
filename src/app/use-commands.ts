import { useState } from 'react';
import { useLocation } from 'react-router';
import { useFirstStock } from '../screens/shelf/first-stock';
import { useSaveFile } from '../screens/shelf/save-file';
import { useToolInHand } from '../state/results/tool-in-hand';
import { useWorkbook } from '../state/use-workbook';
import { useRuler } from '../ui/fields/measure';
import { usePrinter, usualPaper } from '../ui/frame/printer';
import { handOver } from '../ui/frame/save-as';
import { useWords } from '../ui/words';
import { commandMessages as own } from '../ui/words/english/commands';
import { keyMessages as keyWords } from '../ui/words/english/keys';
import type { Asked } from './asked';
import { type Command, commandsFrom } from './commands';
import { type Printable, printablesOf } from './printables';
import { useWorkbookInSight } from './workbook-in-sight';

/** Everything that can be done from here. */
export function useCommands(ask: (what: Asked) => void, go: (address: string) => void): readonly Command[] {
  const [warned] = useState(() => new Set<string>());
  const state = useWorkbook((all) => all);
  const { pathname } = useLocation();
  const words = useWords();
  const prints = usePrintables();
  const { unit } = useRuler();
  return commandsFrom({
    state,
    pathname,
    go,
    prints,
    print: async (make) => {
      const made = await make(usualPaper(unit));
      const lost = made.lost ?? [];
      // Said once of each document, in place of printing it; pressed again, it prints.
      const said = `${made.name}.${made.ending} ${lost.join()}`;
      if (lost.length > 0 && !warned.has(said)) {
        warned.add(said);
        return lost;
      }
      handOver(made);
      return [];
    },
    saveFile: useSaveFile(),
    newStock: useFirstStock(),
    ask,
    words,
    own,
    keyWords,
  });
}

/** What the workbook in sight can be printed as; nothing on the shelf. */
export function usePrintables(): readonly Printable[] {
  const printer = usePrinter();
  const open = useWorkbookInSight();
  const tool = useToolInHand();
  const ruler = useRuler();
  return open ? printablesOf(open, { printer, tool, ruler }) : [];
}
