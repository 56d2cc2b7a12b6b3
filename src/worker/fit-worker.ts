import { neededRooms } from '../core/fit';
import type { SheetPlanner } from '../core/plan';
import { bringOwnStyle } from '../core/style-file/own-style';
import { planSheets } from '../core/yield';
import type { FamilyAsk, FitAnswer, FitQuestion } from './fit-messages';
import { HERE } from './hear-worker';
import { searchAnswers } from './search-answers';
import { searchFamily } from './search-family';
import { searchStyles } from './search-styles';

let newest = 0;
let newestFamily = 0;

const answer = (found: FitAnswer): void => postMessage(found);

/** Lets waiting messages in, so that a newer question or a stop is heard between two styles. */
const listen = () => new Promise<void>((resolve) => setTimeout(resolve, 0));

addEventListener('message', ({ data }: MessageEvent<FitQuestion>) => {
  hear(data).catch(() => answer({ kind: 'failed' }));
});

async function hear(data: FitQuestion): Promise<void> {
  if (data.kind === 'arrange') {
    answer({ kind: 'arrange', number: data.number, rooms: neededRooms(data.contents) });
    return;
  }
  if (data.kind === 'family') {
    newestFamily = data.number;
    await grow(data.number, data.ask);
    return;
  }
  newest = data.number;
  if (data.kind === 'marks') await search(data.number, data.ask);
  if (data.kind === 'answers') await weigh(data);
}

/** What the sheets of one answer may take; the plan found by then comes with its bound. source: our own */
const effort = { seconds: 0.03, now: () => performance.now() };

const planQuickly: SheetPlanner = (parts, paper, tool) => planSheets(parts, paper, tool, effort);

async function weigh({ number, ask, part }: Extract<FitQuestion, { kind: 'answers' }>): Promise<void> {
  for (const found of searchAnswers(ask, planQuickly, part)) {
    answer({ kind: 'answers', number, found });
    await listen();
    if (newest !== number) return;
  }
}

async function search(number: number, ask: Extract<FitQuestion, { kind: 'marks' }>['ask']): Promise<void> {
  ask.ownStyles?.forEach(bringOwnStyle);
  for (const found of searchStyles(ask)) {
    answer({ kind: 'marks', number, found });
    await listen();
    if (newest !== number) return;
  }
}

/** A null member closes the family. */
async function grow(number: number, ask: FamilyAsk): Promise<void> {
  ask.ownStyles?.forEach(bringOwnStyle);
  for (const member of searchFamily(ask)) {
    answer({ kind: 'family', number, member });
    await listen();
    if (newestFamily !== number) return;
  }
  answer({ kind: 'family', number, member: null });
}

postMessage(HERE);
