import { type ReactNode, useEffect } from 'react';
import { useNavigate, useParams } from 'react-router';
import { whereUsed } from '../../state/results/where-used';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { shelfAt } from '../../ui/frame/addresses';
import { BlankState } from '../../ui/frame/blank-state';
import { useWords } from '../../ui/words';
import { PaperForm } from './paper-form';
import { SupplyForm } from './supply-form';
import { ToolForm } from './tool-form';
import './stock.css';

/** One paper, supply or tool of the supplies, to be changed where it stands. */
export function StockScreen({ foot }: { readonly foot: ReactNode }) {
  const { table, id = '' } = useParams();
  const { stock: words, frame } = useWords();
  const rows = useWorkbook((state) => state.rows);
  const usedIn = whereUsed(rows, id);
  const { papers, supplies, tools } = rows;
  const remove = useWorkbook((state) => state.remove);
  const navigate = useNavigate();
  const paper = table === 'papers' ? papers.get(id) : undefined;
  const supply = table === 'supplies' ? supplies.get(id) : undefined;
  const tool = table === 'tools' ? tools.get(id) : undefined;
  const row = paper ?? supply ?? tool;
  useLeaveNothingBegun(id);
  const home = () => void navigate(shelfAt('supplies'));
  return (
    <main id="page" className="page page-sheet stock" tabIndex={-1}>
      {!row ? (
        <BlankState
          title={words.gone}
          act={
            <Button tone="act" onClick={home}>
              {words.toShelf}
            </Button>
          }
        />
      ) : (
        <>
          <h1>{row.name}</h1>
          {paper && <PaperForm paper={paper} />}
          {supply && <SupplyForm supply={supply} />}
          {tool && <ToolForm tool={tool} />}
          {usedIn.length > 0 && <p className="soft">{frame.usedIn(usedIn)}</p>}
          <div className="stock-acts">
            <Button tone="act" onClick={home}>
              {words.done}
            </Button>
            <Button
              onClick={() => {
                remove({ table: paper ? 'papers' : supply ? 'supplies' : 'tools', id });
                home();
              }}
            >
              {words.remove}
            </Button>
          </div>
          {foot}
        </>
      )}
    </main>
  );
}

/** Back from something that was only begun takes it off again: nothing was said of it yet. */
function useLeaveNothingBegun(id: string) {
  const undo = useWorkbook((state) => state.undo);
  const isOnlyBegun = useWorkbook(({ history }) => {
    const [added, ...others] = history.done.at(-1)?.changes ?? [];
    return added?.do === 'add' && added.id === id && others.length === 0;
  });
  useEffect(() => {
    if (!isOnlyBegun) return;
    window.addEventListener('popstate', undo);
    return () => window.removeEventListener('popstate', undo);
  }, [isOnlyBegun, undo]);
}
