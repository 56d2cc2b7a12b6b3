import { Download } from 'lucide-react';
import { useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import type { PieceNet } from '../../core/net';
import { Button } from '../../ui/fields/button';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { Opening } from '../../ui/frame/opening';
import { PrintActs } from '../../ui/frame/print-acts';
import { usePrinter } from '../../ui/frame/printer';
import { saveAs } from '../../ui/frame/save-as';
import { usePageWords } from '../../ui/words';

const FORMATS = ['fold', 'svg', 'dxf'] as const;
/** No piece is called so. */
const ALL = '';

/** The bench card, the net at true size, and the net as a file for other programs. */
export function PrintActions({ recipe, pieces }: { recipe: Recipe; pieces: readonly PieceNet[] }) {
  const words = usePageWords().box;
  const printer = usePrinter();
  const [failed, setFailed] = useState(false);
  const [pieceId, setPieceId] = useState<string>(ALL);
  const save = async (format: (typeof FORMATS)[number]) => {
    try {
      const { name, ending, content } = await printer.netFile(
        recipe,
        format,
        pieceId === ALL ? null : pieceId,
      );
      saveAs(name, ending, content);
      setFailed(false);
    } catch {
      setFailed(true);
    }
  };
  return (
    <>
      <PrintActs
        acts={[
          { label: words.benchCard, tone: 'act', make: (paper) => printer.benchCard(recipe, paper) },
          { label: words.template, make: (paper) => printer.template(recipe, paper) },
        ]}
      />
      <Opening head={words.otherPrograms}>
        <p className="soft">{words.otherProgramsWhy}</p>
        {pieces.length > 1 && (
          <ChoiceStrip
            label={words.netPieces}
            value={pieceId}
            choices={[
              { id: ALL, label: words.netAllPieces },
              ...pieces.map(({ id, label }) => ({ id, label })),
            ]}
            onChange={setPieceId}
          />
        )}
        <div className="net-files">
          {FORMATS.map((format) => (
            <Button key={format} icon={<Download aria-hidden="true" />} onClick={() => void save(format)}>
              {words.netFile[format]}
            </Button>
          ))}
        </div>
        <p role="status">{failed ? words.netFileFailed : ''}</p>
      </Opening>
    </>
  );
}
