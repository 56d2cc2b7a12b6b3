import type { weightWays } from '../../../shared/catalogue';
import type { TableName } from '../../../shared/tables';
import type { Supply } from '../../../shared/workbook';
import type { ShelfDoor } from '../frame/addresses';
import type { Count, Naming, Texts } from './texts';

/** A card weight in pounds, grams and thickness, side by side. */
export type WeightSaying = (ways: ReturnType<typeof weightWays>) => string;

/** Texts of the shelf, of a new recipe, and of the supplies's forms. */
export interface ShelfWords {
  readonly shelf: Texts<
    | 'title'
    | 'newRecipe'
    | 'newEvent'
    | 'newEventName'
    | 'events'
    | 'recipes'
    | 'example'
    | 'noEvents'
    | 'noDate'
    | 'promise'
    | 'promiseWhy'
    | 'openDemo'
    | 'ownBox'
    | 'demoFailed'
    | 'staysHere'
    | 'papers'
    | 'supplies'
    | 'sentBroken'
    | 'sentWhy'
    | 'tools'
    | 'noPapers'
    | 'noSupplies'
    | 'noTools'
    | 'newPaper'
    | 'newSupply'
    | 'newTool'
    | 'files'
    | 'saveEverything'
    | 'openFile'
    | 'bin'
    | 'binEmpty'
    | 'takeOut'
    | 'fileRefused'
    | 'leaveIt'
    | 'takeIn'
    | 'safeKeeping'
    | 'lookAtIt'
  > & {
    readonly doors: Readonly<Record<ShelfDoor, string>>;
    /** What lies behind each. */
    readonly doorsHold: Readonly<Record<ShelfDoor, string>>;
    readonly setAside: (things: readonly { readonly table: TableName; readonly name: string }[]) => string;
    readonly folderWaits: Naming;
    readonly sent: Naming;
    readonly add: Texts<'papers' | 'supplies' | 'tools'>;
    readonly copyOf: Naming;
    readonly copyName: Naming;
    readonly saveFileOf: Naming;
    readonly deleteOf: Naming;
    readonly onDate: Naming;
    readonly marksOf: Naming;
    readonly sheetsOnHand: Count;
    readonly rollsOnHand: Count;
    readonly piecesOnHand: Count;
    readonly bottlesOnHand: Count;
    readonly fileHolds: (fresh: number, differing: number, same: number) => string;
  };
  readonly newRecipe: Texts<'title' | 'why' | 'newLine'> & { readonly nameOf: Naming };
  readonly stock: Texts<
    | 'gone'
    | 'toShelf'
    | 'done'
    | 'remove'
    | 'name'
    | 'colour'
    | 'across'
    | 'up'
    | 'trueSize'
    | 'grain'
    | 'grainAcross'
    | 'grainUp'
    | 'grainNone'
    | 'gsm'
    | 'gsmHelp'
    | 'gsmRefused'
    | 'caliper'
    | 'caliperRefused'
    | 'onHand'
    | 'packs'
    | 'packOf'
    | 'packPrice'
    | 'addPack'
    | 'squaring'
    | 'squaringWhy'
    | 'kind'
    | 'piecesOnHand'
    | 'piecesInPack'
    | 'spreadHelp'
    | 'offerFree'
    | 'offerBuy'
    | 'offerHelp'
    | 'offer'
    | 'width'
    | 'rollLength'
    | 'rollPrice'
    | 'rollsOnHand'
    | 'toolKind'
    | 'fence'
    | 'grooves'
    | 'toolUnit'
    | 'inches'
    | 'millimetres'
    | 'finestMark'
    | 'finestMarkHelp'
    | 'reach'
    | 'reachHelp'
    | 'longestCut'
    | 'groovesAt'
    | 'groovesHelp'
    | 'stylus'
    | 'stylusHelp'
    | 'kerf'
    | 'kerfHelp'
    | 'turns'
    | 'turnsHelp'
    | 'turnsAny'
    | 'turnsOne'
    | 'turnsTwo'
    | 'hand'
    | 'rightHand'
    | 'leftHand'
    | 'stack'
  > & {
    readonly weighs: WeightSaying;
    readonly caliperHelp: Naming;
    readonly kinds: Readonly<Record<Supply['kind'], string>>;
    readonly glue: Texts<
      'bottleGrams' | 'gramsPerSquareMetre' | 'pressMinutes' | 'dryMinutes' | 'priceMinor' | 'onHandBottles'
    >;
    readonly edges: Texts<'left' | 'right' | 'near' | 'far'>;
    readonly removePack: Count;
  };
}
