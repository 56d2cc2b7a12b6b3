import { Link, useOutletContext } from 'react-router';
import type { Recipe } from '../../../shared/workbook';
import { setFractions } from '../../core/draw/strokes/set-fractions';

import { benchToolOf, type EventPlan, handSecondsOfBox } from '../../core/plan';
import { handoutContent } from '../../print';
import { benchOfRecipe } from '../../state/results/bench-result';
import { boxOfRecipe } from '../../state/results/box-result';
import { useToolInHand } from '../../state/results/tool-in-hand';
import { useWorkbook } from '../../state/use-workbook';
import { useRuler } from '../../ui/fields/measure';
import { RecipePicture } from '../../ui/folded/recipe-picture';
import { pageAddress } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import type { OpenWorkbook } from '../../ui/frame/open-workbook';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';
import { usePageWords, useSay } from '../../ui/words';
import { HandoutForm } from './handout-form';
import { Photos } from './photos';
import { SharePanel } from './share-panel';
import './handout.css';

/** How do I teach it? What the maker adds, what the handout says, and the ways to hand it on. */
export function HandoutScreen() {
  const { recipe, workbook, event, plan } = useOutletContext<OpenWorkbook>();
  const words = usePageWords().handout;
  if (!recipe)
    return (
      <BlankState
        title={words.noRecipe}
        act={
          <Link className="button button-act" to={pageAddress(workbook, 'event')}>
            {words.toEvent}
          </Link>
        }
      >
        <p>{words.noRecipeWhy}</p>
      </BlankState>
    );
  return (
    <>
      <HandoutOf key={recipe.id} recipe={recipe} />
      <KitPapers plan={event?.kits === undefined || event.kits === null ? null : plan} />
    </>
  );
}

/** A class or a kit order: what each learner gets, and the labels for it. */
function KitPapers({ plan }: { plan: EventPlan | null }) {
  const { handout, event } = usePageWords();
  const printer = usePrinter();
  return (
    <section className="handout-kits" aria-labelledby="handout-kits">
      <h2 id="handout-kits">{handout.learners}</h2>
      {plan?.kit ? (
        <PrintActs acts={[{ label: event.printKits, make: (paper) => printer.kitLabels(plan, paper) }]} />
      ) : (
        <p className="soft">{handout.learnersHow}</p>
      )}
    </section>
  );
}

function HandoutOf({ recipe }: { recipe: Recipe }) {
  const words = usePageWords().handout;
  const say = useSay();
  const printer = usePrinter();
  const ruler = useRuler();
  const tool = useToolInHand();
  const box = boxOfRecipe(recipe, tool);
  const events = useWorkbook((state) => state.rows.events);
  const bench = benchOfRecipe(recipe, tool, ruler, events.values());
  if (!box || !bench || bench.stops > 0)
    return (
      <BlankState title={words.handoutOf(recipe.name)}>
        <p>{words.mendFirst}</p>
      </BlankState>
    );
  const { style, net } = box;
  const seconds = handSecondsOfBox(net, benchToolOf(tool));
  const stamp = { madeAt: '', code: '' };
  const content = handoutContent({
    recipe,
    style,
    net,
    cards: bench.cards,
    ruler,
    seconds,
    photos: [],
    stamp,
    say,
  });
  return (
    <div className="handout-page">
      <section className="handout-says" aria-labelledby="handout-says">
        <h2 id="handout-says">{words.handoutOf(content.title)}</h2>
        <div className="handout-head">
          <RecipePicture recipe={recipe} />
          <div>
            <p>{content.about}</p>
            <p className="soft">{content.effort}</p>
          </div>
        </div>
        <Lines head={words.youNeed} lines={content.tools} />
        <Lines
          head={words.cut}
          lines={content.cuts.map(({ what, size, otherSize }) => `${what}: ${size}, ${otherSize}`)}
        />
        <h3>{words.steps}</h3>
        <ol className="handout-steps">
          {bench.cards.flatMap(({ piece, steps: own }) =>
            own.map(({ id, headline }) => <li key={`${piece.id} ${id}`}>{setFractions(say(headline))}</li>),
          )}
        </ol>
        <Lines head={words.care} lines={content.cautions} />
        <PrintActs
          acts={[
            { label: words.print, tone: 'act', make: (paper) => printer.handout(recipe, paper) },
            { label: words.page, make: () => printer.handoutPage(recipe) },
          ]}
        />
      </section>
      <section className="handout-yours" aria-labelledby="handout-yours">
        <h2 id="handout-yours">{words.yours}</h2>
        <HandoutForm recipe={recipe} cards={bench.cards} />
        <Photos recipe={recipe} />
        <SharePanel recipe={recipe} />
      </section>
    </div>
  );
}

function Lines({ head, lines }: { head: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h3>{head}</h3>
      <ul className="handout-lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
