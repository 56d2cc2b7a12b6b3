import { useState } from 'react';
import { Button } from '../../ui/fields/button';
import { useKeepingWords } from '../../ui/words/keeping-words';

interface FreeRoomProps {
  /** What the first press asks for. */
  readonly ask: string;
  /** What goes for good at the second. */
  readonly sure: string;
  readonly onSure: () => void;
}

/** Something that cannot be undone: asked for, then said again with what it does. */
export function FreeRoom({ ask, sure, onSure }: FreeRoomProps) {
  const words = useKeepingWords();
  const [asked, setAsked] = useState(false);
  return (
    <div className="keeping-acts">
      {asked ? (
        <>
          <Button
            onClick={() => {
              setAsked(false);
              onSure();
            }}
          >
            {sure}
          </Button>
          <Button tone="quiet" onClick={() => setAsked(false)}>
            {words.eraseLeave}
          </Button>
        </>
      ) : (
        <Button onClick={() => setAsked(true)}>{ask}</Button>
      )}
    </div>
  );
}
