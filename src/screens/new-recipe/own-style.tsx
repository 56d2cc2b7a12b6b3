import { useState } from 'react';
import type { BoxStyle } from '../../core/styles';
import { type PickedStyle, readPickedStyle } from '../../state/intents/read-picked-style';
import { useStyleWhileSeen } from '../../state/results/styles-at-hand';
import { noteMissingPart } from '../../state/results/unanswered';
import { Button } from '../../ui/fields/button';
import { StylePicture } from '../../ui/folded/style-picture';
import { ReasonAndRemedy } from '../../ui/frame/reason-and-remedy';
import { usePickingWords } from '../../ui/words/picking-words';
import { BringFile } from './bring-file';
import { RefusedFile } from './refused-file';
import { StyleProofView } from './style-proof-view';

interface OwnStyleProps {
  readonly onMake: (style: BoxStyle, ownStyle: string) => void;
}

/** A style brought in by a file, tried at many sizes before it is used. */
export function OwnStyle({ onMake }: OwnStyleProps) {
  const words = usePickingWords();
  const [picked, setPicked] = useState<PickedStyle | null>(null);
  useStyleWhileSeen(picked?.ok ? picked.text : undefined);
  return (
    <BringFile
      id="own-style-head"
      title={words.ownStyle}
      why={words.ownStyleWhy}
      label={words.bringStyle}
      accept=".json"
      onPick={(file) => void readPickedStyle(file).then(setPicked, noteMissingPart)}
    >
      {picked && <Picked picked={picked} onMake={onMake} onLeave={() => setPicked(null)} />}
    </BringFile>
  );
}

function Picked({
  picked,
  onMake,
  onLeave,
}: OwnStyleProps & { readonly picked: PickedStyle; readonly onLeave: () => void }) {
  const words = usePickingWords();
  if (!picked.ok)
    return (
      <div className="own-net-picked">
        <RefusedFile
          title={words.styleRefused}
          refusals={picked.refusals}
          say={(refusal) => <ReasonAndRemedy of={refusal} />}
        />
        <Button tone="quiet" onClick={onLeave}>
          {words.leave}
        </Button>
      </div>
    );
  const { style, text } = picked;
  return (
    <div className="own-net-picked">
      <div className="own-style-look">
        <StylePicture style={style} />
        <p>
          <strong>{style.name}</strong> {style.goodFor} <span className="soft">{style.watchOut}</span>
        </p>
      </div>
      <StyleProofView style={style} text={text} />
      <div className="own-net-acts">
        <Button tone="act" onClick={() => onMake(style, text)}>
          {words.makeStyle}
        </Button>
        <Button tone="quiet" onClick={onLeave}>
          {words.leave}
        </Button>
      </div>
    </div>
  );
}
