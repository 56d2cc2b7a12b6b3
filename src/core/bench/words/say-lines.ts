import type { Blank } from '../../net/types';
import type { BenchPoint } from '../types';
import { alike } from './alike-acts';
import { chainLines } from './line-chains';
import { gatherRepeats, type Repeated, sayAgain } from './same-again';
import { type Op, type Speech, sayKept, sayScores, sayWay } from './say-act';

/** Scores that run right across first, then those that stop: marks with the same stops, and stops of the same mark, in one sentence. */
export function sayStraight(scores: readonly Op<'score'>[], speech: Speech): readonly string[] {
  const byStops = alike(scores, ({ span }) => JSON.stringify(span));
  const byMark = alike(scores, ({ at, span }) => `${at} ${span === null}`);
  const marks = (run: readonly Op<'score'>[]) => [...new Set(run.map(({ at }) => at))];
  const stops = ({ span }: Op<'score'>) => (span ? [span] : []);
  return byMark.length < byStops.length
    ? byMark.map((run) => sayScores(marks(run), run.flatMap(stops), speech))
    : byStops.map((run) => sayScores(marks(run), run.slice(0, 1).flatMap(stops), speech));
}

/** Lines between two points: those that repeat with their repeats, the others end to end where they meet; the fewest words of two ways. */
export function sayLines(
  verb: 'Score' | 'Slit' | 'Snip',
  lines: readonly Op<'slitLine' | 'scoreLine' | 'snip'>[],
  size: Blank,
  speech: Speech,
): readonly string[] {
  const kept = alike(lines, (line) => (line.op === 'snip' ? sayKept(line) : ''));
  return kept.flatMap((run) => {
    const keeps = run[0]?.op === 'snip' ? sayKept(run[0]) : '';
    const single = gatherRepeats(run, ({ a, b }): readonly BenchPoint[] => [a, b], size);
    const alone = single.filter(({ mirrors, farther }) => mirrors.length === 0 && !farther);
    const chains = verb === 'Score' ? chainLines(run) : [];
    const ways = [
      sayWays(
        verb,
        keeps,
        [
          ...single
            .filter((one) => !alone.includes(one))
            .map(({ said: { a, b }, ...again }) => ({ said: [a, b], ...again })),
          ...(verb === 'Score'
            ? chainLines(alone.map(({ said }) => said))
            : alone.map(({ said: { a, b } }) => [a, b])
          ).map((said) => ({ said, mirrors: [], farther: null })),
        ],
        speech,
      ),
      ...(chains.length > 0
        ? [
            sayWays(
              verb,
              keeps,
              gatherRepeats(chains, (points) => points, size),
              speech,
            ),
          ]
        : []),
    ];
    return ways.toSorted((a, b) => a.join(' ').length - b.join(' ').length)[0] ?? [];
  });
}

/** `Snip from A to B, and from C to D.`, each that repeats in a sentence of its own. */
function sayWays(
  verb: string,
  keeps: string,
  runs: readonly Repeated<readonly BenchPoint[]>[],
  speech: Speech,
): readonly string[] {
  const said = (run: Repeated<readonly BenchPoint[]>) => sayAgain(run, speech.ruler);
  const alone = runs.filter((run) => said(run) === '').map((run) => sayWay(run.said, speech));
  return [
    ...runs
      .filter((run) => said(run) !== '')
      .map((run) => `${verb} ${sayWay(run.said, speech)}${keeps}${said(run)}.`),
    ...(alone.length > 0 ? [`${verb} ${alone.join(', and ')}${keeps}.`] : []),
  ];
}
