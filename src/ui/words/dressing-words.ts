import type { Bow, DressingPiece, PieceFit, Tie } from '../../../shared/workbook';
import type { Count, Naming, Texts } from './texts';

/** What may be put onto a box at a press. */
export type NewDressing =
  | 'liner'
  | 'layer'
  | 'band'
  | 'tag'
  | 'window'
  | 'cross'
  | 'ring'
  | 'seal'
  | 'clip'
  | 'mount'
  | 'gift';

/** Texts of the Dressing page. */
export type DressingWords = Texts<
  | 'noRecipe'
  | 'noRecipeWhy'
  | 'toEvent'
  | 'none'
  | 'noneWhy'
  | 'first'
  | 'firstName'
  | 'which'
  | 'add'
  | 'copy'
  | 'remove'
  | 'name'
  | 'pieces'
  | 'noPieces'
  | 'ties'
  | 'counted'
  | 'put'
  | 'change'
  | 'why'
  | 'removePiece'
  | 'pieceName'
  | 'perBox'
  | 'paper'
  | 'boxPaper'
  | 'grain'
  | 'size'
  | 'rule'
  | 'panel'
  | 'reveal'
  | 'revealHelp'
  | 'reveals'
  | 'ownReveals'
  | 'oneReveal'
  | 'left'
  | 'right'
  | 'up'
  | 'down'
  | 'sideHelp'
  | 'lap'
  | 'lapHelp'
  | 'bandHeight'
  | 'bandHeightHelp'
  | 'aboveRim'
  | 'aboveRimHelp'
  | 'ease'
  | 'easeHelp'
  | 'way'
  | 'width'
  | 'height'
  | 'cutHelp'
  | 'shape'
  | 'placeOn'
  | 'nowhere'
  | 'fromLeft'
  | 'fromBottom'
  | 'placeHelp'
  | 'strips'
  | 'stripsHelp'
  | 'oneMore'
  | 'doesNotFit'
  | 'doesNotFitWhy'
  | 'moveOnto'
  | 'wrap'
  | 'bow'
  | 'withBow'
  | 'withoutBow'
  | 'supply'
  | 'noSupply'
  | 'noSupplyWhy'
  | 'toShelf'
  | 'holds'
  | 'holdsWhy'
  | 'joint'
  | 'by'
  | 'length'
  | 'widest'
  | 'tape'
  | 'glue'
  | 'dressed'
  | 'mapHead'
  | 'mapWhy'
  | 'printMap'
  | 'piece'
> & {
  readonly dressingOf: Naming;
  readonly overhangs: (across: string, up: string) => string;
  readonly copyOf: Naming;
  readonly newName: Count;
  readonly eachBox: Count;
  readonly cut: Naming;
  readonly from: Naming;
  readonly forAll: (pieces: number, boxes: number) => string;
  readonly removeOf: Naming;
  readonly onto: (panel: string, onto: string) => string;
  readonly perBoxTape: Naming;
  readonly perBoxGlue: (milligrams: number) => string;
  readonly times: (press: number, set: number) => string;
  readonly strip: (strips: number, length: string) => string;
  readonly kinds: Readonly<Record<DressingPiece['kind'], string>>;
  readonly grains: Readonly<Record<DressingPiece['grain'], string>>;
  readonly shapes: Readonly<Record<NonNullable<DressingPiece['shape']>, string>>;
  readonly rules: Readonly<Record<PieceFit['rule'] | 'own', string>>;
  readonly ways: Readonly<Record<'walls' | 'front' | 'sides', string>>;
  readonly wraps: Readonly<Record<Tie['wrap'], string>>;
  readonly bowHelp: Readonly<Record<'loopMm' | 'tailMm' | 'knotMm', string>>;
  readonly bowParts: Readonly<Record<keyof Bow, string>>;
  readonly news: Readonly<Record<NewDressing, string>>;
};
