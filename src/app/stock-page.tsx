import { useParams } from 'react-router';
import { StockScreen } from '../screens/stock/stock-screen';
import { PageWordsProvider } from '../ui/words';
import { englishPages } from '../ui/words/english/pages';
import { inLanguage } from '../ui/words/language';
import { isStock, WordsHere } from './words-here';

/** A page of the supplies, with the words of the trade that stand on it. */
export function StockPage() {
  const { table } = useParams();
  return (
    <PageWordsProvider value={inLanguage('pages', englishPages)}>
      <StockScreen foot={isStock(table) && <WordsHere page={table} />} />
    </PageWordsProvider>
  );
}
