import { useEffect, useState } from 'react';
import type { Keeping } from '../../state/keeping/keeping';
import { useWorkbook } from '../../state/use-workbook';

/** What safe keeping can do; null for the moment until it has been fetched. */
export function useKeeping(): Keeping | null {
  const fetchKeeping = useWorkbook((state) => state.keeping);
  const [keeping, setKeeping] = useState<Keeping | null>(null);
  useEffect(() => {
    let here = true;
    void fetchKeeping().then((fetched) => {
      if (here) setKeeping(fetched);
    });
    return () => {
      here = false;
    };
  }, [fetchKeeping]);
  return keeping;
}

/** The answer of a question to the storage, asked again whenever something was saved or `again` changes; null until there is one. */
export function useAnswer<Answer>(ask: () => Promise<Answer>, again: unknown = null): Answer | null {
  const save = useWorkbook((state) => state.save);
  const [answer, setAnswer] = useState<Answer | null>(null);
  useEffect(() => {
    let here = true;
    void ask().then((given) => {
      if (here) setAnswer(given);
    });
    return () => {
      here = false;
    };
  }, [ask, save, again]);
  return answer;
}
