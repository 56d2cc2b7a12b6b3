import { TextField } from '../../ui/fields/text-field';
import { useKeepingWords } from '../../ui/words/keeping-words';

/** What a device is called in the list; left empty, it has the usual name. */
export function DeviceName({ value, onChange }: { value: string; onChange: (name: string) => void }) {
  const words = useKeepingWords().sharing;
  return (
    <div className="keeping-name">
      <TextField
        label={words.deviceName}
        help={words.deviceHelp}
        most={40}
        value={value}
        onChange={onChange}
      />
    </div>
  );
}
