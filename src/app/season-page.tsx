import { SeasonScreen } from '../screens/season/season-screen';
import { useWorkbook } from '../state/use-workbook';
import { PageWordsProvider } from '../ui/words';
import { englishPages } from '../ui/words/english/pages';
import { inLanguage } from '../ui/words/language';
import { ExampleBand } from './example-band';

/** The page of all events together, with the texts of a workbook's pages. */
export function SeasonPage() {
  const words = inLanguage('pages', englishPages);
  const events = useWorkbook(({ rows }) => rows.events);
  const examples = [...events.values()].filter(({ example }) => example).map(({ name }) => name);
  const example =
    examples.length > 0 ? { name: words.season.exampleNames(examples), example: true as const } : null;
  return (
    <PageWordsProvider value={words}>
      <SeasonScreen band={<ExampleBand of={example} />} />
    </PageWordsProvider>
  );
}
