import { useDeferredValue, useMemo, useState } from 'react';
import { Link, useOutletContext } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { whyLine } from '../../core/bench/words/line-why';
import { drawNet } from '../../core/draw/net-drawing';
import { tableOfLines } from '../../core/draw/net-table';
import type { PieceNet } from '../../core/net';
import { type BoxResult, boxOfRecipe } from '../../state/box-result';
import { useToolInHand } from '../../state/tool-in-hand';
import { NEW_RECIPE } from '../../ui/addresses';
import { BlankState } from '../../ui/blank-state';
import { Findings } from '../../ui/findings';
import { Legend } from '../../ui/legend';
import { LineTable } from '../../ui/line-table';
import type { Lit } from '../../ui/lit';
import { useRuler } from '../../ui/measure';
import type { OpenWorkbook } from '../../ui/open-workbook';
import { usePageWords, useSay } from '../../ui/words';
import { InsideSize } from './inside-size';
import { NetPanel } from './net-panel';
import { PrintActions } from './print-actions';
import { useRecipeEdits } from './recipe-edits';
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
          <Link className="button button-act" to={NEW_RECIPE}>
            {words.pickStyle}
          </Link>
        }
      >
        <p>{words.noRecipeWhy}</p>
      </BlankState>
    );
  return <BoxOfRecipe key={recipe.id} recipe={recipe} />;
}

function BoxOfRecipe({ recipe }: { recipe: Recipe }) {
  const words = usePageWords().box;
  const say = useSay();
  const box = boxOfRecipe(recipe, useToolInHand());
  const edits = useRecipeEdits(recipe);
  const [pieceId, setPieceId] = useState<string | null>(null);
  const [lit, setLit] = useState<Lit>(null);
  const [litSize, setLitSize] = useState<string | null>(null);
  const piece = box?.net.pieces.find(({ id }) => id === pieceId) ?? box?.net.pieces[0];
  const nameOf = (symbol: string) => say(box?.style.symbols[symbol]?.label ?? symbol);
  if (!box || !piece)
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
        <InsideSize net={box.net} />
      </section>
      <section className="box-findings" aria-labelledby="box-findings-head">
        <h2 id="box-findings-head">{words.toKnow}</h2>
        <Findings
          findings={box.findings}
          nameOf={nameOf}
          sound={words.sound}
          onFix={({ symbol, value }) => edits.setSize(symbol, value, nameOf(symbol))}
          onLight={setLitSize}
        />
        <PrintActions recipe={recipe} pieces={box.net.pieces} />
      </section>
      <section className="box-sizes" aria-label={words.sizes}>
        <RecipeForm
          recipe={recipe}
          style={box.style}
          values={box.net.values}
          edits={edits}
          litSize={litSize}
        />
      </section>
      <section className="box-lines" aria-label={words.lines}>
        <LinesOf box={box} piece={piece} recipe={recipe} lit={lit} onLight={setLit} />
      </section>
    </div>
  );
}

interface LinesOfProps {
  readonly box: BoxResult;
  readonly piece: PieceNet;
  readonly recipe: Recipe;
  readonly lit: Lit;
  readonly onLight: (lit: Lit) => void;
}

/** The table and the legend may follow the drawing a moment later: a keystroke waits for the net alone. */
function LinesOf({ box, piece, recipe, lit, onLight }: LinesOfProps) {
  const words = usePageWords().box;
  const ruler = useRuler();
  const { faceUp } = recipe;
  const settled = useDeferredValue(piece);
  const rows = useMemo(() => tableOfLines(settled, faceUp), [settled, faceUp]);
  const bare = useMemo(
    () => drawNet(settled, { ruler, faceUp, scale: 1, textMm: 1, show: { numbers: false, letters: false } }),
    [settled, ruler, faceUp],
  );
  return (
    <>
      <LineTable
        rows={rows}
        lit={lit}
        onLight={onLight}
        caption={words.everyLine}
        why={(row) => whyLine(row, { net: box.net, piece: settled, style: box.style, faceUp })}
      />
      <Legend drawings={[bare]} />
    </>
  );
}
