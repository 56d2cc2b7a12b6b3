import { Share2 } from 'lucide-react';
import { useState } from 'react';
import type { EventPlan } from '../../core/plan';
import { shoppingText } from '../../print';
import { Button } from '../../ui/fields/button';
import { useRuler } from '../../ui/fields/measure';
import { usePageWords, useSay } from '../../ui/words';

type Outcome = 'shared' | 'copied' | 'notShared';

/** The list as a message: by the device's own way of sharing, else copied as text. */
export function ShareList({ plan }: { plan: EventPlan }) {
  const words = usePageWords();
  const say = useSay();
  const ruler = useRuler();
  const [outcome, setOutcome] = useState<Outcome | null>(null);
  const send = async () => {
    const text = shoppingText({ plan, ruler, say, locale: words.locale });
    setOutcome(await shareOrCopy(plan.name, text));
  };
  return (
    <div className="share-list screen-only">
      <Button icon={<Share2 aria-hidden="true" />} onClick={() => void send()}>
        {words.buying.share}
      </Button>
      <p role="status" className="soft">
        {outcome === null ? '' : words.buying[outcome]}
      </p>
    </div>
  );
}

/** Null: the maker closed the sheet without sending. */
async function shareOrCopy(title: string, text: string): Promise<Outcome | null> {
  // Not every browser can share.
  if ('share' in navigator)
    try {
      await navigator.share({ title, text });
      return 'shared';
    } catch (fault) {
      if (fault instanceof DOMException && fault.name === 'AbortError') return null;
    }
  try {
    await navigator.clipboard.writeText(text);
    return 'copied';
  } catch {
    return 'notShared';
  }
}
