import { Plus } from 'lucide-react';
import { Link, useNavigate } from 'react-router';
import type { Paper, Supply, Tool } from '../../../shared/workbook';
import { ticksOfMm } from '../../core/rows/lengths';
import { ownOf } from '../../state/shelf';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { lengthWords, sizeWords, useRuler } from '../../ui/fields/measure';
import { stockAddress } from '../../ui/frame/addresses';
import { Swatch } from '../../ui/frame/swatch';
import { useWords } from '../../ui/words';
import { useFirstStock } from './first-stock';

/** Paper, tape and ribbon on hand, and the tools on the bench; each opens to be edited. */
export function Cupboard() {
  const words = useWords().shelf;
  const { papers, supplies, tools } = useWorkbook((state) => state.rows);
  return (
    <div className="cupboard">
      <Drawer title={words.papers} table="papers" none={words.noPapers}>
        {ownOf(papers).map((paper) => (
          <PaperLine key={paper.id} paper={paper} />
        ))}
      </Drawer>
      <Drawer title={words.supplies} table="supplies" none={words.noSupplies}>
        {ownOf(supplies).map((supply) => (
          <SupplyLine key={supply.id} supply={supply} />
        ))}
      </Drawer>
      <Drawer title={words.tools} table="tools" none={words.noTools}>
        {ownOf(tools).map((tool) => (
          <ToolLine key={tool.id} tool={tool} />
        ))}
      </Drawer>
    </div>
  );
}

interface DrawerProps {
  readonly title: string;
  readonly table: 'papers' | 'supplies' | 'tools';
  readonly none: string;
  readonly children: readonly React.ReactNode[];
}

function Drawer({ title, table, none, children }: DrawerProps) {
  const words = useWords().shelf;
  const first = useFirstStock();
  const navigate = useNavigate();
  const add = () => {
    const made = first(table);
    if (made.ok) void navigate(stockAddress(table, made.id));
  };
  return (
    <section aria-labelledby={`shelf-${table}`}>
      <header className="drawer-head">
        <h2 id={`shelf-${table}`}>{title}</h2>
        <Button tone="quiet" icon={<Plus aria-hidden="true" />} onClick={add}>
          {words.add[table]}
        </Button>
      </header>
      {children.length === 0 ? <p className="soft">{none}</p> : <ul className="drawer">{children}</ul>}
    </section>
  );
}

function PaperLine({ paper }: { paper: Paper }) {
  const words = useWords().shelf;
  const ruler = useRuler();
  return (
    <li>
      <Link className="drawer-line" to={stockAddress('papers', paper.id)}>
        <Swatch colour={paper.colour} />
        <strong>{paper.name}</strong>{' '}
        <span className="soft">{sizeWords([ticksOfMm(paper.acrossMm), ticksOfMm(paper.upMm)], ruler)}</span>{' '}
        <span className="drawer-count">{words.sheetsOnHand(paper.onHandSheets)}</span>
      </Link>
    </li>
  );
}

function SupplyLine({ supply }: { supply: Supply }) {
  const words = useWords().shelf;
  const ruler = useRuler();
  return (
    <li>
      <Link className="drawer-line" to={stockAddress('supplies', supply.id)}>
        <strong>{supply.name}</strong>{' '}
        {'widthMm' in supply && (
          <>
            <span className="soft">{lengthWords(ticksOfMm(supply.widthMm), ruler)}</span>{' '}
            <span className="drawer-count">{words.rollsOnHand(supply.onHandRolls)}</span>
          </>
        )}
        {'onHandPieces' in supply && (
          <span className="drawer-count">{words.piecesOnHand(supply.onHandPieces)}</span>
        )}
        {supply.kind === 'glue' && (
          <span className="drawer-count">{words.bottlesOnHand(supply.onHandBottles)}</span>
        )}
      </Link>
    </li>
  );
}

function ToolLine({ tool }: { tool: Tool }) {
  const words = useWords().shelf;
  return (
    <li>
      <Link className="drawer-line" to={stockAddress('tools', tool.id)}>
        <strong>{tool.name}</strong>{' '}
        <span className="soft">
          {words.marksOf(
            lengthWords(ticksOfMm(tool.finestMarkMm), {
              unit: tool.unit,
              finest: ticksOfMm(tool.finestMarkMm),
            }),
          )}
        </span>
      </Link>
    </li>
  );
}
