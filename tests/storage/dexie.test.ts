import { describeStorage } from './acceptance';
import { newDexiePlace } from './dexie-place';

describeStorage('the browser database', () => newDexiePlace());
