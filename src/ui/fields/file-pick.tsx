import { FileUp } from 'lucide-react';
import { type ComponentProps, useRef } from 'react';
import { Button } from './button';

interface FilePickProps extends Pick<ComponentProps<typeof Button>, 'tone' | 'icon'> {
  readonly label: string;
  /** What the browser offers to choose from, as the `accept` of HTML has it. */
  readonly accept: string;
  readonly multiple?: boolean;
  /** At least one file. */
  readonly onPick: (files: readonly [File, ...File[]]) => void;
}

/** A button that opens a file of the maker’s; the same file may be opened twice in a row. */
export function FilePick({ label, accept, multiple, onPick, icon, tone = 'plain' }: FilePickProps) {
  const chooser = useRef<HTMLInputElement>(null);
  return (
    <>
      <Button
        tone={tone}
        icon={icon ?? <FileUp aria-hidden="true" />}
        onClick={() => chooser.current?.click()}
      >
        {label}
      </Button>
      <input
        ref={chooser}
        type="file"
        accept={accept}
        multiple={multiple}
        hidden
        aria-label={label}
        onChange={({ target }) => {
          const [first, ...others] = target.files ?? [];
          if (first) onPick([first, ...others]);
          target.value = '';
        }}
      />
    </>
  );
}
