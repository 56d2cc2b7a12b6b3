import { SeasonScreen } from '../screens/season/season-screen';
import { PageWordsProvider } from '../ui/words';
import { englishPages } from '../ui/words/english/pages';
import { inLanguage } from '../ui/words/language';

/** The page of all events together, with the texts of a workbook's pages. */
export function SeasonPage() {
  return (
    <PageWordsProvider value={inLanguage('pages', englishPages)}>
      <SeasonScreen />
    </PageWordsProvider>
  );
}
