import { Check, CloudAlert, Pencil } from 'lucide-react';
import { useWords } from '../words';
import './save-state.css';

export type Saving = 'saved' | 'saving' | 'not-saved' | 'memory-only';
const ICONS = { saved: Check, saving: Pencil, 'not-saved': CloudAlert, 'memory-only': CloudAlert } as const;

/** Whether what is on the page is kept: said in a word, and aloud when it changes for the worse. */
export function SaveState({ state, detail }: { state: Saving; detail?: string }) {
  const words = useWords().saving;
  const Icon = ICONS[state];
  const bad = state === 'not-saved' || state === 'memory-only';
  return (
    <span className={`save-state save-state-${state}`} role={bad ? 'alert' : 'status'} title={detail}>
      <Icon aria-hidden="true" />
      <span className="save-state-word">{words[state]}</span>
    </span>
  );
}
