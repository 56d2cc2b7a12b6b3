import { Download } from 'lucide-react';
import { useState } from 'react';
import type { Recipe } from '../../../shared/workbook';
import type { PieceNet } from '../../core/net';
import { Button } from '../../ui/fields/button';
import { ChoiceStrip } from '../../ui/fields/choice-strip';
import { Opening } from '../../ui/frame/opening';
import { PrintActs } from '../../ui/frame/print-acts';
import { type MadeFile, usePrinter } from '../../ui/frame/printer';
import { saveAs } from '../../ui/frame/save-as';
import { usePageWords } from '../../ui/words';

const FORMATS = ['fold', 'svg', 'dxf'] as const;
/** No piece is called so. */
const ALL = '';

/** The bench card, the net at true size, the net as a file for other programs, and a style of their own as a file. */
export function PrintActions({ recipe, pieces }: { recipe: Recipe; pieces: readonly PieceNet[] }) {
  const words = usePageWords().box;
  const printer = usePrinter();
  const [failed, setFailed] = useState(false);
  const [pieceId, setPieceId] = useState<string>(ALL);
  const save = async (making: () => Promise<MadeFile>) => {
    try {
      const { name, ending, content } = await making();
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
            <Button
              key={format}
              icon={<Download aria-hidden="true" />}
              onClick={() =>
                void save(() => printer.netFile(recipe, format, pieceId === ALL ? null : pieceId))
              }
            >
              {words.netFile[format]}
            </Button>
          ))}
        </div>
      </Opening>
      {recipe.ownStyle !== undefined && (
        <div className="net-files">
          <Button
            icon={<Download aria-hidden="true" />}
            onClick={() => void save(() => printer.styleFile(recipe))}
          >
            {words.styleFile}
          </Button>
          <p className="soft">{words.styleFileWhy}</p>
        </div>
      )}
      <p role="status">{failed ? words.netFileFailed : ''}</p>
    </>
  );
}
