import { fetchAhead } from './ahead';
import { localStorageOrNone } from './local-storage';

// Imported first: what is fetched from here comes while the rest of the first script is still setting itself up.
fetchAhead(location.hash, localStorageOrNone());
