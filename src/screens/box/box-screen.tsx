import { memo, useDeferredValue, useMemo, useState } from 'react';
import { Link, useOutletContext } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { whyLine } from '../../core/bench/words/line-why';
import { drawNet } from '../../core/draw/net/net-drawing';
import { tableOfLines } from '../../core/draw/net/net-table';
import type { PieceNet } from '../../core/net';
import { type BoxResult, boxOfRecipe } from '../../state/results/box-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { Legend } from '../../ui/drawing/legend';
import { LineTable } from '../../ui/drawing/line-table';
import type { Lit } from '../../ui/drawing/lit';
import { useRuler } from '../../ui/fields/measure';
import { START } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import { Findings } from '../../ui/frame/findings';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { usePageWords, useSay } from '../../ui/words';
import { InsideSize } from './inside-size';
import { NetPanel } from './net-panel';
import { PrintActions } from './print-actions';
import { type RecipeEdits, useRecipeEdits } from './recipe-edits';
import { RecipeForm } from './recipe-form';
import './box.css';

/** What do I fold? Style, sizes and paper on the left, the net in the middle, what is wrong below it, every line beside it. */
export function BoxScreen() {
  const { recipe } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().box;
  if (!recipe)
    return (
      <BlankState
        title={words.noRecipe}
        act={
          <Link className="button button-act" to={START}>
            {words.pickStyle}
          </Link>
        }
      >
        <p>{words.noRecipeWhy}</p>
      </BlankState>
    );
  return <BoxOfRecipe key={recipe.id} recipe={recipe} />;
}

/** A keystroke waits for the net alone: what else is made from it follows a moment later, from the recipe as it was when the page last came to rest. */
function BoxOfRecipe({ recipe }: { recipe: Recipe }) {
  const words = usePageWords().box;
  const tool = useToolInHand();
  const box = boxOfRecipe(recipe, tool);
  const rested = useDeferredValue(recipe);
  const edits = useRecipeEdits(recipe);
  const [pieceId, setPieceId] = useState<string | null>(null);
  const [lit, setLit] = useState<Lit>(null);
  const [litSize, setLitSize] = useState<string | null>(null);
  const pieceOf = (of: BoxResult | null) =>
    of?.net.pieces.find(({ id }) => id === pieceId) ?? of?.net.pieces[0];
  const piece = pieceOf(box);
  const restedBox = boxOfRecipe(rested, tool) ?? box;
  const restedPiece = pieceOf(restedBox);
  if (!box || !piece || !restedBox || !restedPiece)
    return (
      <BlankState title={words.styleGone}>
        <p>{words.styleGoneWhy}</p>
      </BlankState>
    );

  return (
    <div className="box-page">
      <section className="box-view" aria-label={words.net}>
        <NetPanel
          net={box.net}
          piece={piece}
          recipe={recipe}
          lit={lit}
          onLight={setLit}
          onPiece={setPieceId}
        />
        <InsideSize net={restedBox.net} />
      </section>
      <section className="box-findings" aria-labelledby="box-findings-head">
        <h2 id="box-findings-head">{words.toKnow}</h2>
        <FindingsOf box={restedBox} edits={edits} onLight={setLitSize} />
        <PrintActions recipe={recipe} pieces={box.net.pieces} />
      </section>
      <section className="box-sizes" aria-label={words.sizes}>
        <RecipeForm
          recipe={recipe}
          rested={rested}
          style={box.style}
          values={box.net.values}
          edits={edits}
          litSize={litSize}
        />
      </section>
      <section className="box-lines" aria-label={words.lines}>
        <LinesOf box={restedBox} piece={restedPiece} faceUp={rested.faceUp} lit={lit} onLight={setLit} />
      </section>
    </div>
  );
}

interface FindingsOfProps {
  readonly box: BoxResult;
  readonly edits: RecipeEdits;
  readonly onLight: (symbol: string | null) => void;
}

const FindingsOf = memo(function FindingsOf({ box, edits, onLight }: FindingsOfProps) {
  const words = usePageWords().box;
  const say = useSay();
  const nameOf = (symbol: string) => say(box.style.symbols[symbol]?.label ?? symbol);
  return (
    <Findings
      findings={box.findings}
      nameOf={nameOf}
      sound={words.sound}
      onFix={({ symbol, value }) => edits.setSize(symbol, value, nameOf(symbol))}
      onLight={onLight}
    />
  );
});

interface LinesOfProps {
  readonly box: BoxResult;
  readonly piece: PieceNet;
  readonly faceUp: Recipe['faceUp'];
  readonly lit: Lit;
  readonly onLight: (lit: Lit) => void;
}

const LinesOf = memo(function LinesOf({ box, piece, faceUp, lit, onLight }: LinesOfProps) {
  const words = usePageWords().box;
  const ruler = useRuler();
  const rows = useMemo(() => tableOfLines(piece, faceUp), [piece, faceUp]);
  const bare = useMemo(
    () => drawNet(piece, { ruler, faceUp, scale: 1, textMm: 1, show: { numbers: false, letters: false } }),
    [piece, ruler, faceUp],
  );
  return (
    <>
      <LineTable
        rows={rows}
        lit={lit}
        onLight={onLight}
        caption={words.everyLine}
        why={(row) => whyLine(row, { net: box.net, piece, style: box.style, faceUp })}
      />
      <Legend drawings={[bare]} />
    </>
  );
});
