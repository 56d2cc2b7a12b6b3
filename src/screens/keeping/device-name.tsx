import { useId } from 'react';
import { useKeepingWords } from '../../ui/words/keeping-words';

/** What a device is called in the list. */
export function DeviceName({ value, onChange }: { value: string; onChange: (name: string) => void }) {
  const words = useKeepingWords().sharing;
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{words.deviceName}</label>
      <input
        id={id}
        value={value}
        maxLength={40}
        placeholder={words.thisDevice}
        aria-describedby={`${id}-help`}
        onChange={(event) => onChange(event.target.value)}
      />
      <p id={`${id}-help`} className="soft">
        {words.deviceHelp}
      </p>
    </div>
  );
}
