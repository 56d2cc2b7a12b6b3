import { useMemo, useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import { panelWords } from '../../core/checks/finding';
import { asItStands, type PieceNet } from '../../core/net';
import { boxOfRecipe } from '../../state/results/box-result';
import { useNeededRooms } from '../../state/results/fit-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { useRuler } from '../../ui/fields/measure';
import { SelectField } from '../../ui/fields/text-field';
import type { Shown } from '../../ui/folded/space/box-model';
import { BlankState } from '../../ui/frame/blank-state';
import { type PageWords, usePageWords, useSay } from '../../ui/words';
import { ActList, type FoldStep, useFoldSteps } from './act-list';
import { FoldControls } from './fold-controls';
import { FoldStage } from './fold-stage';
import { foldedThing } from './folded-thing';
import { AngleTable, SizesOfBox } from './sizes-and-angles';

const FIRST: Shown = { contents: true, dressing: true, arrows: false, rulers: true, cutOpen: false };
const TOGGLES = ['contents', 'dressing', 'arrows', 'rulers', 'cutOpen'] as const;

/** One recipe in space: its pieces one at a time, a slider along the closing path, the card's own steps beside it. */
export function FoldRecipe({ recipe }: { recipe: Recipe }) {
  const all = usePageWords();
  const words = all.fold;
  const box = boxOfRecipe(recipe, useToolInHand());
  const pieces = box ? asItStands(box.net) : [];
  const [pieceId, setPieceId] = useState<string | null>(null);
  const piece = pieces.find(({ id }) => id === pieceId) ?? pieces[0];
  if (!box || !piece)
    return (
      <BlankState title={all.box.styleGone}>
        <p>{all.box.styleGoneWhy}</p>
      </BlankState>
    );
  return (
    <>
      {pieces.length > 1 && (
        <ChoiceStrip
          label={words.piece}
          value={piece.id}
          choices={pieces.map(({ id, label }) => ({ id, label }))}
          onChange={setPieceId}
        />
      )}
      <FoldPiece key={piece.id} recipe={recipe} piece={piece} holdsContents={piece === pieces[0]} />
    </>
  );
}

function stateInWords(steps: readonly FoldStep[], done: number, words: PageWords['fold']): string {
  const at = steps.findIndex((step) => done <= step.done);
  const [step, before, last] = [steps[at], steps[at - 1], steps.length - 1];
  if (!step || !before) return words.flat;
  if (done < step.done)
    return words.underWay(at, last, Math.round((100 * (done - before.done)) / (step.done - before.done)));
  return at === last ? words.closed(last) : words.place(at, last);
}

interface FoldPieceProps {
  readonly recipe: Recipe;
  readonly piece: PieceNet;
  readonly holdsContents: boolean;
}

function FoldPiece({ recipe, piece, holdsContents }: FoldPieceProps) {
  const words = usePageWords().fold;
  const say = useSay();
  const ruler = useRuler();
  const tool = useToolInHand();
  const box = boxOfRecipe(recipe, tool);
  const colour = useWorkbook((state) => state.rows.papers.get(recipe.paperId ?? '')?.colour);
  const [done, setDone] = useState(piece.closing.length);
  const [shown, setShown] = useState(FIRST);
  const [dressingId, setDressingId] = useState(recipe.dressings[0]?.id ?? '');
  const steps = useFoldSteps(recipe, piece);
  const { contents } = recipe;
  const { rooms } = useNeededRooms(contents);
  const holds = holdsContents ? rooms[Math.min(contents?.arrangement ?? 0, rooms.length - 1)] : undefined;
  const dressing = recipe.dressings.find(({ id }) => id === dressingId);
  const net = box?.net;
  const thing = useMemo(
    () => net && foldedThing(net, piece, holds, contents, dressing, ruler.finest),
    [net, piece, holds, contents, dressing, ruler.finest],
  );
  if (!box || !thing) return null;

  const { acts } = thing.figure;
  const state = stateInWords(steps, done, words);
  const there: Readonly<Record<(typeof TOGGLES)[number], boolean>> = {
    contents: thing.things.length > 0,
    dressing: thing.placed.length > 0,
    arrows: true,
    rulers: true,
    cutOpen: true,
  };
  return (
    <div className="fold-page">
      <section className="fold-view" aria-label={words.stage}>
        <FoldStage
          thing={thing}
          piece={piece}
          done={done}
          shown={shown}
          colour={colour}
          name={words.pictureOf(say(piece.label), state)}
        />
        <FoldControls acts={acts} done={done} state={state} onDone={setDone} />
        <p role="status" className="said-only">
          {Number.isInteger(done) ? state : ''}
        </p>
      </section>
      <section className="fold-steps" aria-labelledby="fold-steps-head">
        <h2 id="fold-steps-head">{words.steps}</h2>
        <ActList steps={steps} done={done} onDone={setDone} />
      </section>
      <section className="fold-look">
        <fieldset className="fold-toggles">
          <legend>{words.look}</legend>
          {TOGGLES.filter((toggle) => there[toggle]).map((toggle) => (
            <label key={toggle} className="fold-toggle">
              <input
                type="checkbox"
                checked={shown[toggle]}
                onChange={({ target }) => setShown({ ...shown, [toggle]: target.checked })}
              />
              {words[toggle]}
            </label>
          ))}
        </fieldset>
        {recipe.dressings.length > 1 && (
          <SelectField
            label={words.dressed}
            value={dressingId}
            choices={recipe.dressings.map(({ id, name }) => ({ id, label: name }))}
            onChange={setDressingId}
          />
        )}
        <SizesOfBox net={box.net} outside={thing.outside} />
        <AngleTable piece={piece} done={done} nameOf={(panel) => say(panelWords(panel))} />
      </section>
    </div>
  );
}
