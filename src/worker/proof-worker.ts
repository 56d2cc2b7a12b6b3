import { looseEnds, proveStyle } from '../core/proof';
import { bringOwnStyle } from '../core/style-file/own-style';
import { HERE } from './hear-worker';
import type { ProofAnswer, ProofQuestion } from './proof-messages';

const answer = (said: ProofAnswer) => postMessage(said);

/** One question a worker: to cancel, the worker is ended. */
addEventListener('message', ({ data }: MessageEvent<ProofQuestion>) => {
  const style = bringOwnStyle(data.text);
  if (!style) throw new Error('a style that is not one is proven by nobody');
  answer({
    proof: proveStyle(style, { boxes: data.boxes, onBox: (done, of) => answer({ done, of }) }),
    loose: looseEnds(style),
  });
});

postMessage(HERE);
