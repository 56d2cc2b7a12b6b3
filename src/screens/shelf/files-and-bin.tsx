import { Download, ShieldCheck, Trash2 } from 'lucide-react';
import { useEffect, useState } from 'react';
import { Link } from 'react-router';
import type { Refusal } from '../../core/rows/refusals';
import type { ImportPlan } from '../../state/intents/import-plan';
import { readPickedFile } from '../../state/intents/read-picked-file';
import { useWorkbook } from '../../state/use-workbook';
import type { WorkbookIntents } from '../../state/workbook-state';
import { Button } from '../../ui/fields/button';
import { FilePick } from '../../ui/fields/file-pick';
import { KEEPING } from '../../ui/frame/addresses';
import { ImportLook } from '../../ui/frame/import-look';
import { useWords } from '../../ui/words';
import { useSaveFile } from './save-file';

type Looked = { readonly plan: ImportPlan } | { readonly refusals: readonly Refusal[] };

/** Everything to a file, a file to the shelf (looked through before anything is read in), and the bin. */
export function FilesAndBin() {
  const words = useWords().shelf;
  const saveFile = useSaveFile();
  const planImport = useWorkbook((state) => state.planImport);
  const importPlanned = useWorkbook((state) => state.importPlanned);
  const [looked, setLooked] = useState<Looked | null>(null);
  const [binOpen, setBinOpen] = useState(false);

  const look = async (file: File) => {
    const reading = await readPickedFile(file);
    setLooked(reading.ok ? { plan: planImport(reading.file) } : { refusals: reading.refusals });
  };

  return (
    <section className="files" aria-labelledby="shelf-files">
      <h2 id="shelf-files">{words.files}</h2>
      <div className="files-acts">
        <Button icon={<Download aria-hidden="true" />} onClick={() => saveFile({ kind: 'everything' })}>
          {words.saveEverything}
        </Button>
        <FilePick
          label={words.openFile}
          accept=".json,application/json"
          onPick={([file]) => void look(file)}
        />
        <Button
          tone="quiet"
          icon={<Trash2 aria-hidden="true" />}
          aria-expanded={binOpen}
          onClick={() => setBinOpen(!binOpen)}
        >
          {words.bin}
        </Button>
        <Link className="button button-quiet" to={KEEPING}>
          <ShieldCheck aria-hidden="true" />
          {words.safeKeeping}
        </Link>
      </div>
      {looked && (
        <ImportLook
          looked={'plan' in looked ? looked.plan : looked}
          onTake={() => {
            if ('plan' in looked) importPlanned(looked.plan, words.takeIn);
            setLooked(null);
          }}
          onLeave={() => setLooked(null)}
        />
      )}
      {binOpen && <Bin />}
    </section>
  );
}

type Binned = Extract<Awaited<ReturnType<WorkbookIntents['listBin']>>, { ok: true }>['value'];

/** What was deleted in the last thirty days, each a press away from the shelf. */
function Bin() {
  const words = useWords().shelf;
  const listBin = useWorkbook((state) => state.listBin);
  const restore = useWorkbook((state) => state.restoreFromBin);
  const rows = useWorkbook((state) => state.rows);
  const save = useWorkbook((state) => state.save);
  const [binned, setBinned] = useState<Binned>([]);
  useEffect(() => {
    let looking = true;
    void listBin().then((result) => {
      if (looking && result.ok) setBinned(result.value);
    });
    return () => {
      looking = false;
    };
  }, [listBin, save]);
  const lying = binned.filter(({ table, row }) => !rows[table].has(row.id));
  if (lying.length === 0) return <p className="soft">{words.binEmpty}</p>;
  return (
    <ul className="bin">
      {lying.map((thing) => (
        <li key={thing.id}>
          <span>{thing.row.name}</span>
          <Button tone="quiet" onClick={() => restore(thing)}>
            {words.takeOut}
          </Button>
        </li>
      ))}
    </ul>
  );
}
