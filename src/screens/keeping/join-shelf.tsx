import { useState } from 'react';
import { useLocation, useNavigate } from 'react-router';
import type { Keeping } from '../../state/keeping/keeping';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { DeviceName } from './device-name';
import { saveText } from './save-text';
import { useSharingDesk } from './use-sharing';

/** Opened by a link from another device: looked at first, joined only when the maker says so, and with a backup before. What joins is fetched only then. */
export function JoinShelf({ keeping }: { keeping: Keeping }) {
  const { pathname } = useLocation();
  return pathname.startsWith('/join/') ? <Join keeping={keeping} pathname={pathname} /> : null;
}

function Join({ keeping, pathname }: { keeping: Keeping; pathname: string }) {
  const words = useKeepingWords().sharing;
  const navigate = useNavigate();
  const desk = useSharingDesk();
  const sharing = useWorkbook((state) => state.sharing);
  const hasRows = useWorkbook((state) => Object.values(state.rows).some(({ size }) => size > 0));
  const [name, setName] = useState('');
  const [said, setSaid] = useState('');
  if (!desk) return null;
  const join = async () => {
    const there = await desk.isThere();
    if (there !== 'yes') {
      setSaid(there === 'no' ? words.notThere : words.notSecure);
      return;
    }
    if (hasRows) await keeping.backup(saveText);
    if (await desk.join(pathname, name || words.thisDevice)) void navigate('/keeping', { replace: true });
    else setSaid(words.joinBroken);
  };
  return (
    <section aria-labelledby="keeping-join" className="keeping-aside">
      <h2 id="keeping-join">{words.joinTitle}</h2>
      {sharing ? (
        <p>{words.joinedAlready}</p>
      ) : (
        <>
          <p>{words.joinWhy}</p>
          {hasRows && <p>{words.joinBackup}</p>}
          <DeviceName value={name} onChange={setName} />
          <div className="keeping-acts">
            <Button tone="act" onClick={() => void join()}>
              {words.join}
            </Button>
          </div>
        </>
      )}
      <p role="status">{said}</p>
    </section>
  );
}
