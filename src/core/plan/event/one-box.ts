import type { BenchTool } from '../../bench/types';
import type { BoxNet } from '../../net/types';
import { HAND_TIMES } from '../../rows/hand-times';
import { countBoxActs } from '../run/hand-acts';

/** Seconds of hand work on one box by usual hand times: scored, slit, folded, glued, closed; cutting the card and dressing the box apart. */
export function handSecondsOfBox(net: BoxNet, tool: BenchTool): number {
  const acts = countBoxActs({ net, dressing: null, pieces: [] }, tool, [], () => false);
  return HAND_TIMES.reduce(
    (sum, { act, seconds }) => sum + (act === 'set-up' ? 0 : (acts[act] ?? 0) * seconds),
    0,
  );
}
