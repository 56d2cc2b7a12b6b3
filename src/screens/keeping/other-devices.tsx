import { useEffect, useState } from 'react';
import { codeOf } from '../../print';
import type { Keeping } from '../../state/keeping/keeping';
import type { SharedDevice, Sharing, SharingDesk } from '../../state/sharing';
import { useWorkbook } from '../../state/use-workbook';
import { Button } from '../../ui/fields/button';
import { LinkToCopy } from '../../ui/fields/link-to-copy';
import { useKeepingWords } from '../../ui/words/keeping-words';
import { DeviceName } from './device-name';
import { ShownEvents } from './shown-events';
import { addressOf, useSharingDesk } from './use-sharing';

/** The same shelf on another device: how to begin, the links, the devices, and how it stands. */
export function OtherDevices({ keeping }: { keeping: Keeping }) {
  const words = useKeepingWords().sharing;
  const sharing = useWorkbook((state) => state.sharing);
  const [wanted, setWanted] = useState(false);
  return (
    <section aria-labelledby="keeping-sharing">
      <h2 id="keeping-sharing">{words.title}</h2>
      <p>{words.why}</p>
      {sharing || wanted ? (
        <Fetched keeping={keeping} sharing={sharing} />
      ) : (
        <div className="keeping-acts">
          <Button onClick={() => setWanted(true)}>{words.isThere}</Button>
        </div>
      )}
    </section>
  );
}

/** What it takes to share comes only when it is asked for. */
function Fetched({ keeping, sharing }: { keeping: Keeping; sharing: Sharing | null }) {
  const desk = useSharingDesk();
  if (!desk) return null;
  return sharing ? <Shared keeping={keeping} desk={desk} sharing={sharing} /> : <Begin desk={desk} />;
}

function Begin({ desk }: { desk: SharingDesk }) {
  const words = useKeepingWords().sharing;
  const [there, setThere] = useState<'yes' | 'no' | 'not-secure' | null>(null);
  const [name, setName] = useState('');
  useEffect(() => {
    void desk.isThere().then(setThere);
  }, [desk]);
  return (
    <>
      <p role="status">
        {there === null && words.looking}
        {there === 'no' && words.notThere}
        {there === 'not-secure' && words.notSecure}
      </p>
      {there === 'yes' && (
        <>
          <DeviceName value={name} onChange={setName} />
          <div className="keeping-acts">
            <Button tone="act" onClick={() => void desk.begin(name || words.thisDevice)}>
              {words.begin}
            </Button>
          </div>
        </>
      )}
    </>
  );
}

interface SharedProps {
  readonly keeping: Keeping;
  readonly desk: SharingDesk;
  readonly sharing: Sharing;
}

function Shared({ keeping, desk, sharing }: SharedProps) {
  const words = useKeepingWords().sharing;
  const { line, devices, unsent, deletions } = sharing;
  const link = desk.link();
  const others = devices.filter(({ isThis }) => !isThis);
  return (
    <>
      <p role="status">
        <strong>{words.state[line]}</strong>{' '}
        {line !== 'removed' &&
          words.sent(unsent, others.filter(({ hasAll }) => hasAll).length, others.length)}
      </p>
      {line === 'asks' && (
        <div role="alert" className="keeping-trouble">
          <p>{words.asks(deletions)}</p>
          <div className="keeping-acts">
            <Button tone="act" onClick={() => desk.decide(false)}>
              {words.keepAll}
            </Button>
            <Button onClick={() => desk.decide(true)}>{words.takeDeletions}</Button>
          </div>
        </div>
      )}
      {link && line !== 'removed' && (
        <>
          <h3>{words.linkTitle}</h3>
          <p className="soft">{words.linkWhy}</p>
          <LinkToCopy
            label={words.linkTitle}
            address={addressOf(link)}
            code={codeOf(addressOf(link))}
            words={words}
          />
        </>
      )}
      {line !== 'removed' && <ShownEvents desk={desk} sharing={sharing} />}
      <h3>{words.devices}</h3>
      <ul className="keeping-rows">
        {devices.map((device) => (
          <Device key={device.id} device={device} keeping={keeping} desk={desk} />
        ))}
      </ul>
      <div className="keeping-acts">
        <Button onClick={() => void desk.leave()}>{words.leave}</Button>
      </div>
    </>
  );
}

interface DeviceProps {
  readonly device: SharedDevice;
  readonly keeping: Keeping;
  readonly desk: SharingDesk;
}

function Device({ device, keeping, desk }: DeviceProps) {
  const { sharing: words, when } = useKeepingWords();
  const [step, setStep] = useState<'none' | 'asked' | 'removing' | 'failed'>('none');
  const remove = async () => {
    setStep('removing');
    if (!(await desk.remove(device.id))) setStep('failed');
  };
  return (
    <li>
      <p className="keeping-row-face">
        <strong>{device.name}</strong>
        {', '}
        {device.isThis
          ? words.you
          : `${device.hasAll ? words.hasAll : words.hasNot}, ${words.lastHeard(when(device.lastAt, keeping.now()))}`}
        <span role="status">
          {step === 'removing' && <> {words.removing}</>}
          {step === 'failed' && <> {words.notRemoved}</>}
        </span>
      </p>
      {!device.isThis && step !== 'asked' && step !== 'removing' && (
        <Button tone="quiet" aria-label={words.removeOf(device.name)} onClick={() => setStep('asked')}>
          {words.remove}
        </Button>
      )}
      {step === 'asked' && (
        <div className="keeping-look">
          <p>{words.removeWhy(device.name)}</p>
          <div className="keeping-acts">
            <Button tone="act" onClick={() => void remove()}>
              {words.removeOf(device.name)}
            </Button>
            <Button onClick={() => setStep('none')}>{words.cancel}</Button>
          </div>
        </div>
      )}
    </li>
  );
}
