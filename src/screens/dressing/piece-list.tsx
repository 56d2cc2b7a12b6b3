import { Layers, Trash2 } from 'lucide-react';
import type { Dressing } from '../../../shared/workbook';
import { insertCuts, movedOnto, overhangOf, type SizedPiece } from '../../core/dress';
import type { BoxNet } from '../../core/net';
import { whyPiece } from '../../core/plan/why/dressing-why';
import type { Ticks } from '../../core/units';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { lengthWords, sizeWords, useRuler } from '../../ui/fields/measure';
import { Opening } from '../../ui/frame/opening';
import { Swatch } from '../../ui/frame/swatch';
import { usePageWords } from '../../ui/words';
import type { DressingEdits } from './dressing-edits';
import { InsertView } from './insert-view';
import { layerOnLayer } from './new-dressing';
import { PieceFields } from './piece-fields';
import { WhyList } from './why-list';

interface PieceListProps {
  readonly net: BoxNet;
  readonly dressing: Dressing;
  readonly sized: readonly SizedPiece[];
  readonly edits: DressingEdits;
  readonly boxes: number;
  /** The marks that sizes are cut on. */
  readonly mark: Ticks;
}

/** Every cut piece: its size, paper and count on one line, which opens to what it follows and why it is that large. */
export function PieceList({ net, dressing, sized, edits, boxes, mark }: PieceListProps) {
  const words = usePageWords().dressing;
  return (
    <section aria-labelledby="pieces-head">
      <h3 id="pieces-head">{words.pieces}</h3>
      {sized.length === 0 && <p className="soft">{words.noPieces}</p>}
      <ul className="dressing-rows">
        {sized.map((each) => (
          <li key={each.piece.id}>
            <PieceRow {...each} {...{ net, dressing, edits, boxes, mark }} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function PieceRow({ piece, size, net, edits, boxes, mark }: SizedPiece & Omit<PieceListProps, 'sized'>) {
  const words = usePageWords().dressing;
  const ruler = useRuler();
  const papers = useWorkbook((state) => state.rows.papers);
  const paper = piece.paperId === null ? undefined : papers.get(piece.paperId);
  const isInsert = piece.fit?.rule === 'divides' || piece.fit?.rule === 'on-floor';
  const over = size && overhangOf(net, piece, size);
  const facts = [
    words.eachBox(piece.perBox),
    words.from(paper?.name ?? words.boxPaper),
    ...(boxes > 0 ? [words.forAll(boxes * piece.perBox, boxes)] : []),
  ];
  return (
    <Opening
      head={
        <span className="dressing-head">
          {paper && <Swatch colour={paper.colour} />}
          <span>
            <strong>{piece.name}</strong>{' '}
            <span className={size ? 'dressing-size' : 'dressing-stop'}>
              {size ? words.cut(sizeWords([size.across, size.up], ruler)) : words.doesNotFit}
            </span>{' '}
            <span className="soft">{facts.join(', ')}</span>
          </span>
        </span>
      }
    >
      {size ? (
        <>
          <WhyList why={[...whyPiece(net, piece, size), ...insertCuts(net, piece, size, mark)]} />
          {isInsert && <InsertView net={net} piece={piece} size={size} mark={mark} />}
        </>
      ) : (
        <p role="status">{isInsert ? words.insertDoesNotFit : words.doesNotFitWhy}</p>
      )}
      {over && (
        <div className="dressing-note" role="status">
          <p>{words.overhangs(lengthWords(over.across, ruler), lengthWords(over.up, ruler))}</p>
          <Button onClick={() => edits.setPiece(words.moveOnto, movedOnto(piece, over))}>
            {words.moveOnto}
          </Button>
        </div>
      )}
      <PieceFields piece={piece} net={net} edits={edits} />
      <div className="dressing-acts">
        {piece.fit?.rule === 'on-panel' && (
          <Button
            icon={<Layers aria-hidden="true" />}
            onClick={() => edits.dressing(words.oneMore, (old) => layerOnLayer(old, piece))}
          >
            {words.oneMore}
          </Button>
        )}
        <Button
          icon={<Trash2 aria-hidden="true" />}
          aria-label={words.removeOf(piece.name)}
          onClick={() => edits.takeOff(words.removePiece, 'pieces', piece.id)}
        >
          {words.removePiece}
        </Button>
      </div>
    </Opening>
  );
}
