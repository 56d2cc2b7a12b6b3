import { type ReactNode, useState } from 'react';
import { type BoxStyle, STYLES } from '../../core/styles';
import { useStylesAtHand } from '../../state/results/styles-at-hand';
import { StyleTiles } from '../../ui/folded/style-tiles';
import { Opening } from '../../ui/frame/opening';
import { usePickingWords } from '../../ui/words/picking-words';

/** What a maker sees at a glance, read off what each style says of itself; in the order they are shown. */
type StyleFamily = 'tall-lid' | 'tall' | 'low-lid' | 'tray' | 'flat';

function familyOf({ traits }: BoxStyle): StyleFamily {
  if (traits.includes('flat-packet')) return 'flat';
  if (traits.includes('tall')) return traits.includes('lid') ? 'tall-lid' : 'tall';
  return traits.includes('lid') ? 'low-lid' : 'tray';
}

const FAMILIES: readonly StyleFamily[] = ['tall', 'tall-lid', 'tray', 'low-lid', 'flat'];

/** source: our own; a screen that is held in one hand */
const PHONE = '(max-width: 30rem)';

interface StyleFamiliesProps {
  readonly onChoose: (id: string) => void;
  readonly isHidden: (id: string) => boolean;
  readonly extra: (id: string) => ReactNode;
}

/** Styles by family, the maker's own after ours. On a phone the families come first, and the one that is pressed opens. */
export function StyleFamilies(props: StyleFamiliesProps) {
  const words = usePickingWords();
  const { own } = useStylesAtHand();
  const [phone] = useState(() => window.matchMedia(PHONE).matches);
  return (
    <div className="style-families">
      {[...FAMILIES, 'own' as const].map((family) => {
        const styles = family === 'own' ? own : STYLES.filter((style) => familyOf(style) === family);
        const shown = styles.filter(({ id }) => !props.isHidden(id)).length;
        if (shown === 0) return null;
        const head = words.families[family](shown);
        if (phone) return <FamilyOpening key={family} head={head} styles={styles} {...props} />;
        return (
          <section key={family} aria-label={head}>
            <h2>{head}</h2>
            <StyleTiles styles={styles} explained {...props} />
          </section>
        );
      })}
    </div>
  );
}

function FamilyOpening({
  head,
  styles,
  ...tiles
}: StyleFamiliesProps & { readonly head: string; readonly styles: readonly BoxStyle[] }) {
  const [open, setOpen] = useState(false);
  return (
    <Opening head={<strong>{head}</strong>} open={open} onToggle={setOpen}>
      {open && <StyleTiles styles={styles} explained {...tiles} />}
    </Opening>
  );
}
