import { Volume2, VolumeX } from 'lucide-react';
import { useEffect, useState } from 'react';
import { Button } from '../../ui/fields/button';
import { usePageWords } from '../../ui/words';

/** Voices are listed late by some browsers; after so long there are none. Source: our own. */
const VOICES_MS = 2000;

interface ReadAloudProps {
  /** The step in hand. */
  readonly text: string;
  /** Asked for; held above the step, so that it outlives it. */
  readonly wanted: boolean;
  readonly onWanted: (wanted: boolean) => void;
}

/** Reads each step aloud once the maker has asked for it: a button, and a word where this device cannot. */
export function ReadAloud({ text, wanted, onWanted }: ReadAloudProps) {
  const words = usePageWords().bench;
  const { locale } = usePageWords();
  const [mute, setMute] = useState(false);
  const said = words.aloud(text);
  useEffect(() => {
    if (!wanted) return;
    let over = false;
    void voiceOfDevice(locale).then((voice) => {
      if (over) return;
      setMute(voice === null);
      if (voice === null) {
        onWanted(false);
        return;
      }
      const utterance = new SpeechSynthesisUtterance(said);
      utterance.voice = voice;
      utterance.lang = voice.lang;
      speechSynthesis.speak(utterance);
    });
    return () => {
      over = true;
      speechHere()?.cancel();
    };
  }, [wanted, onWanted, said, locale]);
  return (
    <>
      <Button
        aria-pressed={wanted}
        icon={wanted ? <Volume2 aria-hidden="true" /> : <VolumeX aria-hidden="true" />}
        onClick={() => onWanted(!wanted)}
      >
        {words.readAloud}
      </Button>
      <p className="soft bench-mute" role="status">
        {mute ? words.noVoice : ''}
      </p>
    </>
  );
}

/** Not every browser speaks, whatever its types say. */
const speechHere = () => ('speechSynthesis' in globalThis ? globalThis.speechSynthesis : null);

/** A voice that speaks on the device itself: others send the words to a server. Null: it has none for this language. */
async function voiceOfDevice(locale: string): Promise<SpeechSynthesisVoice | null> {
  const speech = speechHere();
  if (!speech) return null;
  const find = () => {
    const own = speech.getVoices().filter(({ localService }) => localService);
    const spoken = (locale.split('-')[0] ?? locale).toLowerCase();
    const isOf = ({ lang }: SpeechSynthesisVoice, tag: string) =>
      lang.replace('_', '-').toLowerCase().startsWith(tag.toLowerCase());
    return own.find((voice) => isOf(voice, locale)) ?? own.find((voice) => isOf(voice, spoken)) ?? null;
  };
  if (speech.getVoices().length === 0)
    await new Promise((resolve) => {
      speech.addEventListener('voiceschanged', resolve, { once: true });
      setTimeout(resolve, VOICES_MS);
    });
  return find();
}
