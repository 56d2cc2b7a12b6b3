import type { ReactNode } from 'react';
import { Button } from '../../ui/fields/button';
import { useDraftingWords } from '../../ui/words/drafting-words';

interface ListRowProps {
  readonly text: string;
  readonly onRemove: () => void;
  /** What else can be done with it. */
  readonly children?: ReactNode;
}

/** A joint, a step or a limit in its list, and the button that removes it. */
export function ListRow({ text, onRemove, children }: ListRowProps) {
  const words = useDraftingWords();
  return (
    <li>
      <span>{text}</span>
      {children}
      <Button tone="quiet" aria-label={words.takeOut(text)} onClick={onRemove}>
        {words.remove}
      </Button>
    </li>
  );
}
