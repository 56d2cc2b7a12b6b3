import type { Supply } from '../../../shared/workbook';
import { useWorkbook } from '../../state/use-workbook';
import { SelectField, TextField } from '../../ui/fields/text-field';
import { useWords } from '../../ui/words';
import { GlueFields } from './glue-fields';
import { PieceFields } from './piece-fields';
import { RollFields } from './roll-fields';
import { asKind } from './supply-kind';

const KINDS = ['tape', 'glue', 'ribbon', 'twine', 'closure', 'mount', 'wrap', 'contents'] as const;

/** Anything beside paper: what it is, how it is sold, what it costs, how much of it lies in the drawer. */
export function SupplyForm({ supply }: { supply: Supply }) {
  const words = useWords().stock;
  const edit = useWorkbook((state) => state.edit);
  const set = (label: string, change: (old: Supply) => Supply) =>
    void edit('supplies', supply.id, label, change);
  return (
    <form className="stock-form" onSubmit={(event) => event.preventDefault()}>
      <TextField
        label={words.name}
        value={supply.name}
        onChange={(name) => set(words.name, (old) => ({ ...old, name }))}
      />
      <SelectField
        label={words.kind}
        value={supply.kind}
        choices={KINDS.map((id) => ({ id, label: words.kinds[id] }))}
        onChange={(id) => {
          const kind = KINDS.find((each) => each === id);
          if (kind) set(words.kind, (old) => asKind(old, kind));
        }}
      />
      {'rollMm' in supply && <RollFields supply={supply} />}
      {'onHandPieces' in supply && <PieceFields supply={supply} />}
      {supply.kind === 'glue' && <GlueFields supply={supply} />}
    </form>
  );
}
