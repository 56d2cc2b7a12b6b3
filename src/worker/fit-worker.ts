import { neededRooms } from '../core/fit';
import type { FitAnswer, FitQuestion } from './fit-messages';
import { searchStyles } from './search-styles';

let newest = 0;

const answer = (found: FitAnswer): void => postMessage(found);

/** Lets waiting messages in, so that a newer question or a stop is heard between two styles. */
const listen = () => new Promise<void>((resolve) => setTimeout(resolve, 0));

addEventListener('message', ({ data }: MessageEvent<FitQuestion>) => {
  if (data.kind === 'arrange') {
    answer({ kind: 'arrange', number: data.number, rooms: neededRooms(data.contents) });
    return;
  }
  newest = data.number;
  if (data.kind === 'marks') void search(data.number, data.ask);
});

async function search(number: number, ask: Extract<FitQuestion, { kind: 'marks' }>['ask']): Promise<void> {
  for (const found of searchStyles(ask)) {
    answer({ kind: 'marks', number, found });
    await listen();
    if (newest !== number) return;
  }
}
