import { useCallback, useEffect, useMemo, useRef } from 'react';
import { Link, useSearchParams } from 'react-router';
import { drawNetToFit } from '../../core/draw/net/net-drawing';
import { INKS } from '../../core/draw/strokes/inks';
import type { PicturedWord } from '../../core/draw/strokes/word-pictures';
import { layNet, type PieceNet } from '../../core/net';
import { openTop } from '../../core/styles/boxes/open-top';
import { DrawingView, type Space } from '../../ui/drawing/drawing-view';
import { InkSample } from '../../ui/drawing/ink-sample';
import { WordPicture } from '../../ui/drawing/word-picture';
import { useRuler } from '../../ui/fields/measure';
import { SHELF } from '../../ui/frame/addresses';
import { classNames } from '../../ui/frame/class-names';
import { KeyList } from '../../ui/frame/key-list';
import { useSay, useWords } from '../../ui/words';
import type { GlossaryWord } from '../../ui/words/english/glossary-names';
import { TOLD_INKS, useHelpWords } from '../../ui/words/help-words';
import './help.css';

const CALIPER_UM = 300; // source: favor cardstock, common practice, no source
const LETTER_MM = 4.5;

/** Every line type as it is drawn, a net that has them, and the words of the trade. */
export function HelpScreen() {
  const words = useHelpWords();
  const { locale } = useWords();
  const [search] = useSearchParams();
  const terms = (Object.keys(words.names) as GlossaryWord[]).sort((one, other) =>
    words.names[one].localeCompare(words.names[other], locale),
  );
  const sought = search.get('word');
  return (
    <main id="page" className="page page-sheet help" tabIndex={-1}>
      <header className="page-head">
        <h1>{words.title}</h1>
        <Link className="button button-plain" to={SHELF}>
          {words.toShelf}
        </Link>
        <p>{words.why}</p>
      </header>
      <Lines />
      <NetShown />
      <section aria-labelledby="help-words">
        <h2 id="help-words">{words.words}</h2>
        <dl className="help-terms">
          {terms.map((word) => (
            <Term key={word} word={word} sought={word === sought} />
          ))}
        </dl>
      </section>
      <section aria-labelledby="help-keys">
        <h2 id="help-keys">{words.keys}</h2>
        <p className="soft">{words.ofKeys.why}</p>
        <KeyList words={words.ofKeys} />
      </section>
    </main>
  );
}

/** A word with what it looks like; `sought`: somebody came here for it. */
function Term({ word, sought }: { word: GlossaryWord; sought: boolean }) {
  const { names, entries } = useHelpWords();
  const entry: { readonly says: string; readonly shows?: string } = entries[word];
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!sought) return;
    place.current?.scrollIntoView({ block: 'center' });
    place.current?.focus({ preventScroll: true });
  }, [sought]);
  return (
    <div ref={place} tabIndex={-1} className={classNames('help-term', sought && 'help-sought')}>
      <dt>{names[word]}</dt>
      <dd>
        {entry.shows !== undefined && (
          <WordPicture word={word as PicturedWord} name={names[word]} shows={entry.shows} />
        )}
        <p>{entry.says}</p>
      </dd>
    </div>
  );
}

function Lines() {
  const words = useHelpWords();
  const say = useSay();
  return (
    <section aria-labelledby="help-lines">
      <h2 id="help-lines">{words.lines}</h2>
      <p className="soft">{words.linesWhy}</p>
      <table className="help-lines">
        <thead>
          <tr>
            <th scope="col">{words.line}</th>
            <th scope="col">{words.looks}</th>
            <th scope="col">{words.hands}</th>
          </tr>
        </thead>
        <tbody>
          {TOLD_INKS.map((ink) => (
            <tr key={ink} data-ink={ink}>
              <th scope="row">
                <InkSample ink={ink} /> {say(INKS[ink].means)}
              </th>
              <td>{words.ofLine[ink].looks}</td>
              <td>{words.ofLine[ink].hands}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** The simplest box there is, whose net has most kinds of lines. */
function NetShown() {
  const words = useHelpWords();
  const piece = useMemo(() => layNet(openTop, { sizes: {}, caliperUm: CALIPER_UM }).pieces[0], []);
  return (
    <section aria-labelledby="help-net">
      <h2 id="help-net">{words.net}</h2>
      <p className="soft">{words.netWhy}</p>
      <div className="help-net">{piece && <NetOf piece={piece} />}</div>
    </section>
  );
}

function NetOf({ piece }: { piece: PieceNet }) {
  const ruler = useRuler();
  const draw = useCallback(
    (space: Space) => drawNetToFit(piece, space, { ruler, textMm: LETTER_MM, faceUp: 'inside' }),
    [piece, ruler],
  );
  return <DrawingView draw={draw} />;
}
