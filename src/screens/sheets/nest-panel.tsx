import { Download, Scissors, TriangleAlert, X } from 'lucide-react';
import { useMemo, useState } from 'react';
import { type NestedSheet, outlineOfPiece } from '../../core/draw/sheet/nested-net';
import type { PlannedPaper } from '../../core/plan';
import { inches, millimetres } from '../../core/units';
import type { CuttingTool } from '../../core/yield';
import { nestedDxf, nestedSvg } from '../../print';
import { boxOfRecipe } from '../../state/results/box-result';
import { useNest } from '../../state/results/nest-result';
import { useSheetCounts } from '../../state/results/sheet-counts';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { NestView } from '../../ui/drawing/nest-view';
import { Button } from '../../ui/fields/button';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { lengthWords, useRuler } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import { MakingState, useMaking } from '../../ui/frame/making';
import { usePrinter } from '../../ui/frame/printer';
import { saveAs } from '../../ui/frame/save-as';
import { usePageWords } from '../../ui/words';

const GAPS = {
  in: [inches(0), inches(0, 1, 16), inches(0, 1, 8)],
  mm: [millimetres(0), millimetres(1), millimetres(3)],
} as const;

interface NestPanelProps {
  readonly planned: PlannedPaper;
  readonly tool: CuttingTool;
  readonly eventId: string;
}

/** The boxes' real outlines laid close on one sheet, for scissors, knife or machine: how many more, the drawing, the files. */
export function NestPanel({ planned, tool, eventId }: NestPanelProps) {
  const words = usePageWords().sheets;
  const ruler = useRuler();
  const { nest, busy, start, cancel } = useNest();
  const pieces = usePieces(planned, eventId);
  const [pieceId, setPieceId] = useState('');
  const [gap, setGap] = useState('0');
  const [asked, setAsked] = useState('');
  const chosen = pieces.find(({ part }) => part.id === pieceId) ?? pieces[0];
  const [boxed] = useSheetCounts(chosen ? [{ part: chosen.part, paper: planned.sheet, tool }] : []);
  if (!chosen || !boxed) return null;

  const { part, net, piece } = chosen;
  // A nest belongs to its piece and its gap: with another chosen, it is out of sight until it is laid again.
  const asking = `${part.id} ${gap} ${ruler.unit}`;
  const lay = () => {
    setAsked(asking);
    start({
      part: { id: part.id, ring: outlineOfPiece(piece), grain: part.grain },
      paper: planned.sheet,
      boxed: boxed.layout,
      gap: GAPS[ruler.unit][Number(gap)] ?? GAPS[ruler.unit][0],
    });
  };
  const shown = nest !== null && asked === asking ? nest : null;
  const title = words.nestTitle(part.name, planned.name);
  const count = shown?.parts.length ?? 0;
  return (
    <section className="nest" aria-label={words.interlock}>
      <h3>{words.interlock}</h3>
      <p className="soft">{words.interlockWhy}</p>
      <div className="nest-asks screen-only">
        {pieces.length > 1 && (
          <SelectField
            label={words.nestPiece}
            value={part.id}
            choices={pieces.map((each) => ({ id: each.part.id, label: each.part.name }))}
            onChange={setPieceId}
          />
        )}
        <div className="nest-gap">
          <ChoiceStrip
            named
            label={words.nestGap}
            value={gap}
            choices={GAPS[ruler.unit].map((length, at) => ({
              id: `${at}`,
              label: lengthWords(length, ruler),
            }))}
            onChange={setGap}
          />
          <p className="field-note">{words.nestGapHelp}</p>
        </div>
      </div>
      <div className="nest-acts screen-only">
        {busy ? (
          <Button icon={<X aria-hidden="true" />} onClick={cancel}>
            {words.nestCancel}
          </Button>
        ) : (
          <Button icon={<Scissors aria-hidden="true" />} disabled={!boxed.exact} onClick={lay}>
            {words.nestStart}
          </Button>
        )}
      </div>
      <p role="status">
        {!boxed.exact && words.stillCounting}
        {busy && `${words.nestBusy}. `}
        {shown && <strong>{words.nested(count, shown.boxed)}</strong>}
      </p>
      {shown && count > 0 && (
        <FoundNest
          nested={{ title, net, piece, nest: shown, sheet: planned.sheet }}
          {...{ part, busy, eventId }}
        />
      )}
    </section>
  );
}

interface FoundNestProps {
  readonly nested: NestedSheet;
  readonly part: { readonly count: number };
  readonly busy: boolean;
  readonly eventId: string;
}

/** A nest that was found: the drawing, what it saves, and its files. */
function FoundNest({ nested, part, busy, eventId }: FoundNestProps) {
  const words = usePageWords().sheets;
  const printer = usePrinter();
  const { doing, setDoing, make, making } = useMaking();
  const { title, nest, sheet, piece } = nested;
  const count = nest.parts.length;
  const file = (ending: string, text: string, type: string) =>
    saveAs(title, ending, new Blob([text], { type }));
  return (
    <>
      <p className="nest-label">
        <Scissors aria-hidden="true" /> {words.notOnTrimmer}
      </p>
      <NestView nest={nest} paper={sheet} piece={piece} stale={busy} />
      {count > nest.boxed && nest.boxed > 0 ? (
        <p>
          {words.nestSheets(part.count, Math.ceil(part.count / count), Math.ceil(part.count / nest.boxed))}
        </p>
      ) : (
        <p>{nest.boxed > 0 && words.noGain}</p>
      )}
      <p className="soft">{words.nestMost(nest.most)}</p>
      <p className="nest-caution">
        <TriangleAlert aria-hidden="true" /> {words.nestCaution}
      </p>
      <div className="nest-acts screen-only">
        <Button
          icon={<Download aria-hidden="true" />}
          onClick={() => file('svg', nestedSvg(nested), 'image/svg+xml')}
        >
          {words.saveAs('SVG')}
        </Button>
        <Button
          icon={<Download aria-hidden="true" />}
          onClick={() => file('dxf', nestedDxf(nested), 'image/vnd.dxf')}
        >
          {words.saveAs('DXF')}
        </Button>
        <Button
          icon={<Download aria-hidden="true" />}
          aria-disabled={making}
          onClick={() => making || void make(() => printer.nestedSheet(nested, eventId))}
        >
          {words.saveAs('PDF')}
        </Button>
        <MakingState doing={doing} setDoing={setDoing} />
      </div>
    </>
  );
}

/** The pieces of boxes cut from a paper, with their nets. */
function usePieces(planned: PlannedPaper, eventId: string) {
  const recipes = useWorkbook((state) => state.rows.recipes);
  const event = useWorkbook((state) => state.rows.events.get(eventId));
  const tool = useToolInHand();
  return useMemo(
    () =>
      planned.parts.flatMap((part) => {
        if (part.kind !== 'box') return [];
        const line = event?.lines.find(({ id }) => id === part.lineId);
        const recipe = line && recipes.get(line.recipeId);
        const box = recipe && boxOfRecipe(recipe, tool);
        const piece = box?.net.pieces.find(({ id }) => part.id === `${part.lineId}.${id}`);
        return box && piece ? [{ part, net: box.net, piece }] : [];
      }),
    [planned, event, recipes, tool],
  );
}
