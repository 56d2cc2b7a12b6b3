import { sourceKind } from '../../../shared/catalogue/source-kind';
import type { PageWords } from '../../ui/words';
import type { Say } from '../../ui/words/spoken';

/** Where a size or a caution comes from, as a maker is told: published sources by name, what everybody does as a rule of thumb, what we only remember not at all. */
export function saidSource(source: string, words: PageWords['contents'], say: Say): string {
  const kind = sourceKind(source);
  if (kind === 'practice') return words.ruleOfThumb;
  return kind === 'memory' ? '' : words.source(say(source));
}
