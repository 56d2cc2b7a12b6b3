import { bench, describe } from 'vitest';
import { ask, PAPERS, THINGS, TOOLS } from '../core/answers/asked-boxes';
import { judgeAnswers } from '../core/answers/judge-answers';

/** All 30 things × 3 papers × 3 tools, each judged by brute force; the gate takes three of them. */
describe('answers to four questions', () => {
  bench(
    '270 questions',
    () => {
      for (const thing of THINGS)
        for (const paper of PAPERS.keys())
          for (const tool of TOOLS.keys()) judgeAnswers(ask(thing, paper, tool));
    },
    { iterations: 1, warmupIterations: 0, time: 0, warmupTime: 0 },
  );
});
