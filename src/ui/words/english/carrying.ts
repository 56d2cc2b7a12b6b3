import { plural } from './plural';

interface Carried {
  readonly name: string;
  readonly favors: number;
  readonly lies: 'upright' | 'on-back' | 'on-side';
  readonly layers: number;
  readonly perCrate: number;
  readonly crates: number;
  readonly inLast: number;
  readonly fewest: boolean;
}

const LIES = {
  upright: 'standing up',
  'on-back': 'lying on the back',
  'on-side': 'lying on a side',
} as const;

export const carryingMessages = {
  head: 'Carrying',
  why: 'Type the inside of your crate or tote. We work out how favors stand in it, and how many you need.',
  begin: 'Add a crate',
  remove: 'Remove the crate',
  sides: { widthMm: 'Width inside', depthMm: 'Depth inside', heightMm: 'Height inside' },
  wiggle: 'Gap between favors',
  layers: 'Layers',
  layersHelp: 'Stack one trial layer first. We can’t say what a box will hold.',
  mayLie: 'Favors may lie down',
  crates: (count: number) => plural(count, 'crate'),
  line: ({ name, favors, lies, layers, perCrate, crates, inLast, fewest }: Carried) =>
    `${name}: ${favors} in ${plural(crates, 'crate')}, ${perCrate} to a crate${
      layers > 1 ? ` in ${layers} layers` : ''
    }, ${LIES[lies]}.${crates > 1 && inLast < perCrate ? ` The last holds ${inLast}.` : ''}${
      fewest ? ' Fewest possible with all of them the same way up and square to the crate.' : ''
    }`,
  fillOn: (date: string) => `Fill late: your schedule starts filling on ${date}.`,
  fillLate: 'Fill late, so the boxes stay crisp.',
  keepDry: 'Keep dry: cover the crates, and keep them off the floor and out of a damp car.',
};
