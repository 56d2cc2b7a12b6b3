import { bench, describe } from 'vitest';
import { ask, PAPERS, THINGS, TOOLS } from '../core/answers/asked-boxes';
import { judgeAnswers } from '../core/answers/judge-answers';

const inMs = (times: readonly number[]): string => {
  const sorted = [...times].sort((a, b) => a - b);
  return [0.5, 0.95, 1].map((at) => (sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * at))] ?? 0).toFixed(0)).join(' / '); // biome-ignore format: one row
};

/** All 30 things × 3 papers × 3 tools, each judged by brute force; the gate takes three of them. Every fault is named, and fails it. */
describe('answers to four questions', () => {
  bench(
    '270 questions',
    () => {
      const [firsts, alls, faults]: [number[], number[], string[]] = [[], [], []];
      for (const [at, thing] of THINGS.entries())
        for (const paper of PAPERS.keys())
          for (const tool of TOOLS.keys())
            try {
              const { firstMs, allMs } = judgeAnswers(ask(thing, paper, tool));
              if (firstMs !== null) firsts.push(firstMs);
              alls.push(allMs);
            } catch (error) {
              faults.push(`thing ${at}, paper ${paper}, tool ${tool}: ${String(error)}`);
            }
      process.stdout.write(
        `first answer ms median / p95 / most ${inMs(firsts)}, all styles ${inMs(alls)}; ${firsts.length} have one, ${faults.length} faults\n`,
      );
      if (faults.length > 0) throw new Error(faults.join('\n'));
    },
    { iterations: 1, warmupIterations: 0, time: 0, warmupTime: 0, throws: true },
  );
});
