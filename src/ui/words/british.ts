import { timeOfDay } from '../../core/plan/run/calendar-day';
import type { SecondLanguage } from './language';

const day = new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone: 'UTC' });
const dayOfWeek = new Intl.DateTimeFormat('en-GB', {
  weekday: 'short',
  month: 'short',
  day: 'numeric',
  timeZone: 'UTC',
});

/** English as it is written in Britain: what is said otherwise than in the United States, and nothing else. */
export const british: SecondLanguage = {
  pages: {
    locale: 'en-GB',
    spoken: {
      'Soda can, 12 fl oz': 'Drinks can, 12 fl oz',
      'Bag of candy, tied': 'Bag of sweets, tied',
      'Candied almond': 'Sugared almond',
      Cone: 'Cornet',
      'Hard or round candy, nuts and popcorn can choke a child under four. Keep these favors away from them, and say so on the tag.':
        'Hard or round sweets, nuts and popcorn can choke a child under four. Keep these favours away from them, and say so on the tag.',
      'Wrapped candy, tea bags, seed packets, small toys. Put loose seeds or tea in a bag first.':
        'Wrapped sweets, tea bags, seed packets, small toys. Put loose seeds or tea in a bag first.',
      'Chocolates, cookies, soap, jewelry: anything to show by lifting a lid.':
        'Chocolates, biscuits, soap, jewellery: anything to show by lifting a lid.',
      'score, fold toward you': 'score, fold towards you',
      'Check the unit: inches or millimeters?': 'Check the unit: inches or millimetres?',
    },
    hours: {
      ofDay: (minute) => timeOfDay(minute, 'en-GB'),
      day: (date) => dayOfWeek.format(new Date(`${date}T00:00:00Z`)),
    },
    frame: {
      millimetres: 'Millimetres',
      notFoundWhy: 'It may have been deleted. The bin keeps items for 30 days.',
    },
    faults: {
      full: 'This browser’s storage is full. Save everything to a file, then delete the bin and earlier versions on the Backup page.',
    },
    notices: { deleted: (name) => `${name} is in the bin.` },
    field: {
      heard: {
        'fraction-of-millimetre': (typed, said) =>
          `We read ${typed} as a fraction of a millimetre: ${said}. Did you mean inches?`,
      },
    },
    drawing: { allIn: (unit) => (unit === 'in' ? 'in inches' : 'in millimetres') },
    shelf: {
      bin: 'Bin',
      binEmpty: 'The bin is empty. Deleted items stay here for 30 days on which you use the app.',
      doorsHold: { backup: 'files, bin, recovery' },
      onDate: (date) => day.format(new Date(`${date}T00:00:00Z`)),
    },
    stock: {
      colour: 'Colour',
      millimetres: 'millimetres',
      caliperRefused: 'Type millimetres, or points such as 12 pt.',
    },
    box: {
      otherProgramsWhy:
        'Flat, inside up, full size in millimetres. Layers are named cut, score, slit and glue.',
    },
    contents: { cares: { 'choking-food': 'hard sweets, nuts or popcorn' } },
    fold: { outsideFace: 'outside, in the paper’s colour' },
    event: { copyLine: 'Another colour', copyLineOf: (name) => `Add ${name} in another colour` },
    guests: {
      favor: 'Favour',
      pasteHelp:
        'One guest per line: name, table, needs, favour. Only the name is needed. Columns from a spreadsheet work too.',
      favorOf: (name) => `Favour of ${name}`,
    },
    marks: {
      hardest: {
        mm: ['whole-centimetre marks', '5 mm marks', '1 mm marks', '½ mm marks'],
      },
    },
    sheets: {
      nestGapHelp: '0 for scissors or knife: neighbours share a cut. A cutting machine may need a little.',
    },
  },
  help: {
    linesWhy:
      'They look the same on screen and on paper, and none depends on colour. Exported files name each kind of line instead.',
    ofLine: {
      'score-valley': { hands: 'Score, then fold towards you.' },
      grain: { hands: 'Lay the cardstock so its fibres run this way.' },
    },
    entries: {
      grain: {
        says: 'The way the fibres run. Cardstock folds cleanly along the grain. A fold across it may crack.',
        shows: 'A sheet with fibres from left to right, and an arrow along them.',
      },
      roughness: {
        says: 'How fine the marks of a box are, added up. 0 means whole inches or whole centimetres.',
      },
      score: { shows: 'A dashed line, folded towards you, and a dash-and-dot line, folded away.' },
    },
  },
  keeping: {
    bin: 'Bin',
    binEmpty: 'The bin is empty.',
    intoBin: 'Move to bin',
    emptyBin: 'Empty the bin',
    forgetEarlier: 'Delete the bin and all earlier versions',
    earlierForgotten: 'The bin and the earlier versions are deleted. Their space is free.',
    copiesWhy:
      'One file holds everything: boxes, events, supplies, tools and photos. The bin and earlier versions stay in this browser. Keep the file in a safe place, or send it to yourself.',
    tried: { binned: (name) => `${name} is in the bin, unchanged, for 30 days.` },
    eraseWhy:
      'This deletes every box, event, supply, tool, photo and setting in this browser, with the bin and earlier versions. It can’t be undone. Files you saved are not touched.',
  },
  picking: {
    units: {
      mm: 'millimetres',
      cm: 'centimetres',
      m: 'metres',
      um: 'micrometres',
    },
  },
};
