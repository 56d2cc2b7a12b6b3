import { SeasonScreen } from '../screens/season/season-screen';
import { useWorkbook } from '../state/use-workbook';
import { PageWordsProvider } from '../ui/words';
import { englishPages } from '../ui/words/english/pages';
import { inLanguage } from '../ui/words/language';
import { ExampleBand } from './example-band';

/** The page of all events together, with the texts of a workbook's pages. */
export function SeasonPage() {
  const words = inLanguage('pages', englishPages);
  const isExample = useWorkbook(({ rows }) => [...rows.events.values()].some(({ example }) => example));
  return (
    <PageWordsProvider value={words}>
      <SeasonScreen
        band={<ExampleBand of={isExample ? { name: words.season.exampleName, example: true } : null} />}
      />
    </PageWordsProvider>
  );
}
