import { useLocation, useNavigate } from 'react-router';
import { useFirstStock } from '../screens/shelf/first-stock';
import { useSaveFile } from '../screens/shelf/save-file';
import { useWorkbook } from '../state/use-workbook';
import { useRuler } from '../ui/fields/measure';
import { type MadeFile, type Printer, type PrinterPaper, usePrinter, usualPaper } from '../ui/frame/printer';
import { openInTab } from '../ui/frame/save-as';
import { useWords } from '../ui/words';
import type { PrintName } from '../ui/words/command-words';
import { type Command, commandsFrom } from './commands';
import { commandMessages as own } from './messages/commands';
import { keyMessages as keyWords } from './messages/keys';
import { workbookInSight } from './workbook-in-sight';

/** Everything that can be done from here. */
export function useCommands(askKeys: () => void): readonly Command[] {
  const state = useWorkbook((all) => all);
  const { pathname } = useLocation();
  const navigate = useNavigate();
  const words = useWords();
  const printer = usePrinter();
  const { unit } = useRuler();
  return commandsFrom({
    state,
    pathname,
    go: (address) => void navigate(address),
    prints: printsFrom(printer, usualPaper(unit)),
    saveFile: useSaveFile(),
    newStock: useFirstStock(),
    askKeys,
    words,
    own,
    keyWords,
  });
}

/** What the workbook in sight can be printed as: papers about its box, and what its event comes to. */
function printsFrom(printer: Printer, paper: PrinterPaper): [PrintName, () => Promise<void>][] {
  const open = workbookInSight();
  if (!open) return [];
  const { recipe, plan } = open;
  const prints: [PrintName, () => Promise<MadeFile>][] = [];
  if (recipe)
    prints.push(
      ['benchCard', () => printer.benchCard(recipe, paper)],
      ['template', () => printer.template(recipe, paper)],
      ['handoutPaper', () => printer.handout(recipe, paper)],
    );
  if (plan && plan.papers.length > 0)
    prints.push(
      ['cuttingSheets', () => printer.cuttingSheets(plan, paper)],
      ['shoppingList', () => printer.shoppingList(plan, paper)],
      ['runSheet', () => printer.runSheet(plan, paper)],
    );
  if (plan?.kit) prints.push(['kitLabels', () => printer.kitLabels(plan, paper)]);
  return prints.map(([name, make]) => [
    name,
    async () => {
      const made = await make();
      openInTab(made.name, made.ending, made.content);
    },
  ]);
}
