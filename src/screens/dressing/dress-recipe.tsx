import { Copy, Plus, Trash2 } from 'lucide-react';
import { useMemo, useState } from 'react';
import type { Dressing, FavorEvent, Recipe } from '../../../shared/workbook';
import { sizePieces } from '../../core/dress';
import type { BoxNet } from '../../core/net';
import { benchToolOf, cutMarkOf, type EventPlan, netOfRecipe } from '../../core/plan';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { Button } from '../../ui/fields/button';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { TextField } from '../../ui/fields/text-field';
import { BlankState } from '../../ui/frame/blank-state';
import { usePageWords } from '../../ui/words';
import { AdhesiveOf } from './adhesive-of';
import { CountedList } from './counted-list';
import { useDressingEdits } from './dressing-edits';
import { DressingMap } from './dressing-map';
import { LookPicture } from './look-picture';
import { addDressing } from './new-dressing';
import { PieceList } from './piece-list';
import { PutOn } from './put-on';
import { TieList } from './tie-list';

/** Most dressings of one recipe, as the saved format has it. */
const MOST_DRESSINGS = 20;

interface DressRecipeProps {
  readonly recipe: Recipe;
  readonly event: FavorEvent | null;
  readonly plan: EventPlan | null;
}

/** The dressings of one box: which one, what is on it, and the flat card with all of it in place. */
export function DressRecipe({ recipe, event, plan }: DressRecipeProps) {
  const words = usePageWords().dressing;
  const lines = (event?.lines ?? []).filter(({ recipeId }) => recipeId === recipe.id);
  const inEvent = lines.find(({ dressingId }) => dressingId !== null)?.dressingId;
  const [chosen, setChosen] = useState<string | null>(inEvent ?? null);
  const { dressings } = recipe;
  const dressing = dressings.find(({ id }) => id === chosen) ?? dressings[0];
  const edits = useDressingEdits(recipe.id, dressing?.id ?? '');
  const net = useMemo(() => netOfRecipe(recipe), [recipe]);
  if (!net) return null;

  const add = (label: string, name: string, of?: Dressing) => {
    const next = addDressing(recipe, name, of);
    edits.recipe(label, (old) => addDressing(old, name, of));
    setChosen(next.dressings.at(-1)?.id ?? null);
  };
  if (!dressing)
    return (
      <div className="dressing-page">
        <BlankState
          title={words.none}
          act={
            <Button tone="act" onClick={() => add(words.first, words.firstName)}>
              {words.first}
            </Button>
          }
        >
          <p>{words.noneWhy}</p>
        </BlankState>
        <DressingMap recipe={recipe} net={net} dressing={null} sized={[]} />
      </div>
    );
  const boxes = (plan?.lines ?? [])
    .filter((line) => line.recipeId === recipe.id && line.dressingId === dressing.id)
    .reduce((sum, { making }) => sum + making, 0);
  return (
    <div className="dressing-page">
      <section className="dressing-list" aria-labelledby="dressing-head">
        <h2 id="dressing-head">{words.dressingOf(recipe.name)}</h2>
        {dressings.length > 1 && (
          <ChoiceStrip
            label={words.which}
            value={dressing.id}
            choices={dressings.map(({ id, name }) => ({ id, label: name }))}
            onChange={setChosen}
          />
        )}
        <div className="dressing-name">
          <TextField
            label={words.name}
            value={dressing.name}
            onChange={(name) => edits.dressing(words.name, (old) => ({ ...old, name }))}
          />
          <DressingActs {...{ recipe, dressing, edits, add }} />
        </div>
      </section>
      <Dressed key={dressing.id} {...{ recipe, net, dressing, edits, boxes, event }} />
    </div>
  );
}

interface DressingActsProps {
  readonly recipe: Recipe;
  readonly dressing: Dressing;
  readonly edits: ReturnType<typeof useDressingEdits>;
  readonly add: (label: string, name: string, of?: Dressing) => void;
}

/** Another one, a copy, or none. */
function DressingActs({ recipe: { dressings }, dressing, edits, add }: DressingActsProps) {
  const words = usePageWords().dressing;
  const isFull = dressings.length >= MOST_DRESSINGS;
  return (
    <div className="dressing-acts">
      <Button
        icon={<Plus aria-hidden="true" />}
        disabled={isFull}
        onClick={() => add(words.add, words.newName(dressings.length + 1))}
      >
        {words.add}
      </Button>
      <Button
        icon={<Copy aria-hidden="true" />}
        disabled={isFull}
        onClick={() => add(words.copy, words.copyOf(dressing.name), dressing)}
      >
        {words.copy}
      </Button>
      <Button
        icon={<Trash2 aria-hidden="true" />}
        onClick={() =>
          edits.recipe(words.remove, (old) => ({
            ...old,
            dressings: old.dressings.filter(({ id }) => id !== dressing.id),
          }))
        }
      >
        {words.remove}
      </Button>
    </div>
  );
}

interface DressedProps {
  readonly recipe: Recipe;
  readonly net: BoxNet;
  readonly dressing: Dressing;
  readonly edits: ReturnType<typeof useDressingEdits>;
  /** Boxes of the event that are dressed so; 0 outside one. */
  readonly boxes: number;
  readonly event: FavorEvent | null;
}

function Dressed({ recipe, net, dressing, edits, boxes, event }: DressedProps) {
  const tool = useToolInHand();
  const finestMark = cutMarkOf(benchToolOf(tool));
  const sized = useMemo(() => sizePieces(net, dressing, finestMark), [net, dressing, finestMark]);
  const shared = { net, dressing, edits, boxes };
  return (
    <>
      <div className="dressing-parts">
        <PieceList {...shared} sized={sized} mark={finestMark} />
        <TieList {...shared} mark={finestMark} />
        <CountedList {...shared} />
        <PutOn {...shared} recipe={recipe} />
        <AdhesiveOf net={net} sized={sized} event={event} />
      </div>
      <div className="dressing-seen">
        <LookPicture recipe={recipe} net={net} dressing={dressing} mark={finestMark} />
        <DressingMap recipe={recipe} net={net} dressing={dressing} sized={sized} />
      </div>
    </>
  );
}
