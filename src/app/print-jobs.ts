import type { Recipe } from '../../shared/workbook';
import type { GrainWay } from '../core/draw/grain-arrow';
import type { PrintDocument } from '../print/print-document';
import { type BenchCardOfPiece, benchOfRecipe } from '../state/bench-result';
import { boxOfRecipe } from '../state/box-result';
import { rulerOf } from '../state/ruler-of';
import { toolInHand } from '../state/tool-in-hand';
import type { WorkbookStore } from '../state/workbook-store';
import type { MadeFile, Printer } from '../ui/printer';

const GRAIN = { upright: 'up', around: 'across', free: null } as const satisfies Record<
  Recipe['grain'],
  GrainWay | null
>;

/** Puts on paper what the workbook holds. The PDF writer and each kind of page are fetched when first asked for. */
export function printJobs(workbook: WorkbookStore): Printer {
  const asked = (recipe: Recipe) => {
    const now = workbook.getState();
    const ruler = rulerOf(now);
    const tool = toolInHand(now.rows.tools, ruler.unit);
    const box = boxOfRecipe(recipe, tool);
    if (!box) throw new Error(`no style is called ${recipe.styleId}`);
    return {
      box,
      cards: benchOfRecipe(recipe, tool, ruler)?.cards ?? ([] as readonly BenchCardOfPiece[]),
      shared: {
        recipeName: recipe.name,
        faceUp: recipe.faceUp,
        grain: GRAIN[recipe.grain],
        ruler,
        stamp: stampOf(recipe.id),
      },
    };
  };

  return {
    async benchCard(recipe, paper) {
      const { printBenchCard } = await import('../print/bench-card');
      const { box, cards, shared } = asked(recipe);
      return inPdf(
        printBenchCard({
          ...shared,
          paper,
          styleName: box.style.name,
          inside: box.net.inside,
          cards,
          notes: recipe.notes,
        }),
      );
    },
    async template(recipe, paper) {
      const { printTemplate } = await import('../print/template');
      const { box, shared } = asked(recipe);
      return inPdf(printTemplate({ ...shared, paper, pieces: box.net.pieces }));
    },
    shoppingList: () => Promise.reject(new Error('not yet')),
    shoppingTable: () => Promise.reject(new Error('not yet')),
  };
}

const stampOf = (id: string) => ({ madeAt: new Date().toISOString(), code: id.slice(0, 8) });

async function inPdf(document: PrintDocument): Promise<MadeFile> {
  const [{ writePdf }, regular, bold] = await Promise.all([
    import('../print/pdf'),
    fetchFace('inter-regular.ttf'),
    fetchFace('inter-bold.ttf'),
  ]);
  const bytes = writePdf(document, { regular, bold });
  return {
    name: document.name,
    ending: 'pdf',
    content: new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/pdf' }),
  };
}

async function fetchFace(file: string): Promise<Uint8Array> {
  const answer = await fetch(new URL(`fonts/${file}`, document.baseURI));
  if (!answer.ok) throw new Error(`${file}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}
