import { memo } from 'react';
import { Link } from 'react-router';
import { helpAt } from '../ui/frame/addresses';
import type { PageName } from '../ui/frame/pages';
import { usePageWords } from '../ui/words';
import type { GlossaryWord } from '../ui/words/english/glossary-names';
import './words-here.css';

const STOCK = ['papers', 'tools'] as const;
type Stock = (typeof STOCK)[number];

export const isStock = (table: string | undefined): table is Stock => STOCK.some((known) => known === table);

/** The words of the trade that stand on each page. */
const WORDS_OF: Readonly<Record<PageName | Stock, readonly GlossaryWord[]>> = {
  contents: ['inside-outside', 'clearance'],
  box: ['net', 'panel', 'flap', 'glue-tab', 'score', 'score-to-score', 'slit', 'caliper', 'grain'],
  fold: ['net', 'panel', 'score', 'lap'],
  marks: ['easy-mark', 'roughness', 'inside-outside', 'score-to-score', 'blank'],
  dressing: ['dressing', 'liner', 'lap'],
  event: ['spares', 'sheet'],
  sheets: ['sheet', 'blank', 'yield', 'grain', 'squaring', 'offcut', 'kerf'],
  shopping: ['sheet', 'spares'],
  bench: ['fence', 'score', 'slit', 'scant-full', 'lap', 'burnish'],
  handout: ['net', 'score', 'burnish'],
  papers: ['sheet', 'caliper', 'grain', 'squaring', 'offcut'],
  tools: ['fence', 'easy-mark', 'score', 'kerf'],
};

/** At the foot of a page: its words of the trade, each leading to what it means. */
export const WordsHere = memo(function WordsHere({ page }: { page: PageName | Stock }) {
  const words = usePageWords().glossary;
  return (
    <nav className="words-here screen-only" aria-label={words.here}>
      <span className="soft">{words.here}:</span>
      {WORDS_OF[page].map((word) => (
        <Link key={word} className="link-alone" to={helpAt(word)}>
          {words.names[word]}
        </Link>
      ))}
    </nav>
  );
});
