import { weightWays } from '../../../shared/catalogue';
import { type HeardPaper, readPaper } from '../../../shared/read-paper';
import { printMoney } from '../../core/plan/buying/money';
import { ticksOfMm } from '../../core/rows/lengths';
import { useWords } from '../words';
import type { paperLabelMessages } from '../words/english/paper-label';
import type { Wording } from '../words/wording';
import { sizeWords, useRuler } from './measure';
import { TextField } from './text-field';

interface PaperLabelFieldProps {
  readonly label: string;
  readonly words: Wording<typeof paperLabelMessages>;
  readonly currency: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  /** Whether a text without a size is refused yet; else as soon as something is typed. */
  readonly refuses?: boolean;
}

/** A paper typed as its label has it; below stands all that was read of it, and what was not. */
export function PaperLabelField({ label, words, currency, text, onText, refuses }: PaperLabelFieldProps) {
  const ruler = useRuler();
  const { locale } = useWords();
  const heard = readPaper(text, ruler.unit);
  const refused = heard === null && (refuses ?? text.trim() !== '');
  const read = ({ paper, heard: has, unread }: HeardPaper) => {
    const [pack] = paper.packs;
    return words.read({
      sheet: sizeWords([ticksOfMm(paper.acrossMm), ticksOfMm(paper.upMm)], ruler),
      ways: weightWays(paper),
      weighed: has.weight || has.caliper,
      price: pack ? { money: printMoney(pack.priceMinor, currency, locale), sheets: pack.sheets } : null,
      unread,
    });
  };
  return (
    <TextField
      label={label}
      help={
        <p className={refused || (heard && heard.unread.length > 0) ? 'field-refused' : undefined}>
          {heard ? read(heard) : refused ? words.noSize : words.help}
        </p>
      }
      value={text}
      onChange={onText}
    />
  );
}
