import { Unreadable } from './lengths';
import { readPanelPhrase } from './panel-phrases';

/** The flat card as hands see it: panels by their names, and the lines between them. */
export interface FlatCard {
  readonly panels: readonly { readonly name: string; readonly area: number }[];
  /** Which way each was creased, seen from the inside: in is a valley. Null where nothing turns, or nobody has creased it yet. */
  readonly lines: readonly {
    readonly between: readonly [string, string];
    readonly creased: 'in' | 'out' | null;
    readonly turns: boolean;
    /** Which way it runs on the flat card, degrees from 0 to 180. */
    readonly runsDeg: number;
  }[];
}

/** What hands did, in order. A turn: every line that was turned, and where it stands after. A press: who lies on whom. */
export type Deed =
  | { readonly did: 'fold' | 'tuck'; readonly turned: readonly string[] }
  | { readonly did: 'press'; readonly pairs: readonly string[] };

export interface Folded {
  readonly deeds: readonly Deed[];
  /** Panels that took adhesive, and on which face. */
  readonly sticky: readonly string[];
}

export const pairOf = (one: string, other: string): string => [one, other].sort().join(' | ');

/** Folds a card by its printed words alone. */
export function foldByWords(headlines: readonly string[], card: FlatCard): Folded {
  const hands = new Hands(card);
  for (const headline of headlines) hands.step(headline.split(/(?<=\.) (?=[A-Z])/));
  return { deeds: hands.deeds, sticky: [...hands.sticky].sort() };
}

type Line = FlatCard['lines'][number];
/** Who lies on whom, and on which face where it is said. */
type Pressed = readonly [one: string, other: string, face?: string | undefined];
type Way = 'over' | 'back' | 'up' | 'in' | 'out';
const nounOf = (name: string): string => name.replace(/ \d+$/, '').split(' ').at(-1) ?? name;
const TOWARDS: Readonly<Record<Way, 'in' | 'out'>> = {
  over: 'in',
  up: 'in',
  in: 'in',
  back: 'out',
  out: 'out',
};

/** The near and far half of one wall stay in line when a bag is opened. */
const isWithinWall = ({ between }: Line): boolean => {
  const [one, other] = between.map((name) => name.replace(/ (near|far) /, ' '));
  return one === other;
};

class Hands {
  readonly deeds: Deed[] = [];
  readonly sticky = new Set<string>();
  readonly #card: FlatCard;
  readonly #names: readonly string[];
  /** Lines folded flat over, and so opened again when the box is. */
  readonly #flat = new Set<Line>();
  readonly #pressed: [string, string][] = [];
  #it: readonly string[] = [];
  #before: readonly string[] = [];

  constructor(card: FlatCard) {
    this.#card = card;
    this.#names = card.panels.map(({ name }) => name);
  }

  step(sentences: readonly string[]): void {
    for (const sentence of sentences)
      if (sentence === 'Do the same at the top.')
        for (const again of this.#before) this.#sentence(again.replaceAll('bottom', 'top'));
      else this.#sentence(sentence);
    this.#before = sentences;
  }

  #sentence(sentence: string): void {
    for (const [pattern, act] of this.#sentences) {
      const found = pattern.exec(sentence);
      if (!found) continue;
      act(found.slice(1));
      return;
    }
    throw new Unreadable(sentence);
  }

  readonly #sentences: readonly (readonly [RegExp, (words: string[]) => void])[] = [
    [/^Thread .+ of ribbon through (.+)\.$/, ([panel = '']) => void this.#panels(panel)],
    [/^Turn (?:over left to right, )?inside up\.$/, () => undefined],
    [/^Fold every score right over.*; rub down, open\.$/, () => undefined],
    [
      /^Tape (.+)\.$/,
      ([what = '']) => {
        const named = what.split(/, and (?=the (?:inside|outside) of )/).flatMap((each) => {
          const [, face = '', panels = ''] =
            /^the (inside|outside) of (.+?), (?:\d+ strips of )?[\d][^,]*$/.exec(each) ?? [];
          return this.#stick(face, panels, each);
        });
        this.#it = [...new Set(named)];
      },
    ],
    [
      /^Dab liquid glue on the (inside|outside) of (.+)\.$/,
      ([face = '', panels = '']) => {
        this.#it = this.#stick(face, panels, panels);
      },
    ],
    [
      /^Fold (.+?) (over|back|up|in|out) onto (.+)\.$/,
      ([what = '', way, onto = '']) => {
        const panels = this.#panels(what);
        const their = onto === 'their tabs';
        const met = their ? [] : this.#panels(onto);
        this.#fold(panels, way as Way);
        this.#press(
          their
            ? panels.flatMap((wall) => this.#tabsOf(wall).map((tab): Pressed => [tab, wall]))
            : panels.flatMap((one) => met.map((other): Pressed => [one, other])),
        );
      },
    ],
    [
      /^Fold (.+) (over|back|up|in|out)((?:, then .+)?)\.$/,
      ([what = '', way, then = '']) => {
        for (const each of [what, ...then.split(', then ').slice(1)]) {
          const panels = this.#panels(each);
          this.#fold(panels, way as Way);
          this.#it = panels;
        }
      },
    ],
    [
      /^Tuck (.+) in\.$/,
      ([what = '']) => {
        const panels = this.#panels(what);
        const [lid] = panels;
        // A lid that is tucked takes its tuck along.
        const tuck = this.#names.find((name) => panels.length === 1 && name === lid?.replace(/lid$/, 'tuck'));
        this.#turn('tuck', this.#hinges(tuck === undefined ? panels : [...panels, tuck]), () => 'in');
      },
    ],
    [
      /^Bring (.+) together\.$/,
      ([what = '']) => {
        const panels = this.#panels(what);
        this.#turn('fold', this.#hinges(panels), ({ between, creased }) => {
          if (creased === null) throw new Unreadable(`which way does ${between.join(' and ')} fold?`);
          return creased;
        });
        this.#it = panels;
      },
    ],
    [
      /^Roll up (.+)\.$/,
      ([what = '']) => {
        this.#it = this.#panels(what);
        if (this.#it.length !== this.#names.length) throw new Unreadable('only a whole card is rolled');
        this.#turn('fold', [], () => 'in');
      },
    ],
    [/^Open and square it\.$/, () => this.#open('fold')],
    [/^Open and tuck it in\.$/, () => this.#open('tuck')],
    [
      /^Press (.+)\.$/,
      ([what = '']) => {
        this.#press(
          what.split(/, and (?=.+ to )/).flatMap((each) => {
            const [, all, face, next] =
              /^(.+), each to (?:the (inside|outside) of )?the next (.+)$/.exec(each) ?? [];
            if (all !== undefined && next !== undefined) return this.#ring(this.#panels(all), next, face);
            const [, those = '', on, onto = ''] =
              /^(.+) to (?:the (inside|outside) of )?((?:the |both |all ).+|[a-z ]+ \d+)$/.exec(each) ?? [];
            const [ones, others] = [this.#panels(those), this.#panels(onto)];
            return ones.flatMap((one) => others.map((other): Pressed => [one, other, on]));
          }),
        );
      },
    ],
  ];

  #panels(phrase: string): readonly string[] {
    if (/^(it|them)$/.test(phrase)) {
      if (this.#it.length === 0 || (phrase === 'it') !== (this.#it.length === 1))
        throw new Unreadable(`${phrase} after ${this.#it.join(' and ')}`);
      return this.#it;
    }
    return readPanelPhrase(phrase, this.#names);
  }

  #stick(face: string, phrase: string, sentence: string): readonly string[] {
    if (phrase === '') throw new Unreadable(sentence);
    const panels = this.#panels(phrase);
    for (const panel of panels) this.sticky.add(`${face} of ${panel}`);
    return panels;
  }

  #fold(panels: readonly string[], way: Way): void {
    const hinges = this.#hinges(panels);
    this.#turn('fold', hinges, () => TOWARDS[way]);
    if (way === 'over' || way === 'back') for (const line of hinges) this.#flat.add(line);
  }

  #turn(did: 'fold' | 'tuck', lines: readonly Line[], to: (line: Line) => 'in' | 'out' | 'opens'): void {
    for (const line of lines) {
      const way = to(line);
      if (way !== 'opens' && line.creased !== null && line.creased !== way)
        throw new Unreadable(`${line.between.join(' and ')} is creased the other way`);
    }
    this.deeds.push({ did, turned: lines.map((line) => `${pairOf(...line.between)} ${to(line)}`).sort() });
  }

  /** The loops that presses have made are squared; what was folded flat opens with them, unless it is stuck down. */
  #open(did: 'fold' | 'tuck'): void {
    if (this.#pressed.length === 0) throw new Unreadable('nothing is joined yet');
    const loop = this.#pressed.flatMap(([one, other]) => this.#way(one, other));
    const isAlongFlat = ({ runsDeg }: Line): boolean =>
      [...this.#flat].some((flat) => Math.abs(flat.runsDeg - runsDeg) < 1);
    const isStuck = ({ between }: Line): boolean =>
      this.#pressed.some((pair) => pairOf(...pair) === pairOf(...between));
    const lines = [
      ...new Set([...loop.filter((line) => isAlongFlat(line) && !isWithinWall(line)), ...this.#flat]),
    ].filter((line) => line.turns && !isStuck(line));
    this.#turn(did, lines, (line) => (this.#flat.has(line) ? 'opens' : 'in'));
    this.#flat.clear();
    this.#it = [];
  }

  #press(pairs: readonly Pressed[]): void {
    const said = pairs.map(([one, other, face]) => {
      this.#pressed.push([one, other]);
      return `${pairOf(one, other)}, ${face ?? this.#meets(one, other)}`;
    });
    const last = this.deeds.at(-1);
    if (last?.did === 'press')
      this.deeds[this.deeds.length - 1] = { did: 'press', pairs: [...last.pairs, ...said].sort() };
    else this.deeds.push({ did: 'press', pairs: said.sort() });
    this.#it = [];
  }

  /** Adhesive on the outside meets an inside, where nothing else is said. */
  #meets(one: string, other: string): string {
    const faces = [one, other].flatMap((panel) =>
      ['outside', 'inside'].filter((face) => this.sticky.has(`${face} of ${panel}`)),
    );
    if (faces[0] === undefined) throw new Unreadable(`nothing sticks ${one} to ${other}`);
    return faces[0] === 'outside' ? 'inside' : 'outside';
  }

  /** Tab 3 goes to wall 4, the last to the first. */
  #ring(tabs: readonly string[], noun: string, face: string | undefined): Pressed[] {
    const numberOf = (name: string): number => Number(/\d+$/.exec(name)?.[0]);
    return tabs.map((tab) => [tab, `${noun} ${(numberOf(tab) % tabs.length) + 1}`, face]);
  }

  /** Sticky tabs with the name of their wall. */
  #tabsOf(wall: string): readonly string[] {
    const own = wall.split(' ').slice(0, -1);
    return [...this.sticky].flatMap((each) => {
      const [, panel = ''] = each.split(' of ');
      return own.every((word) => panel.split(' ').includes(word)) && panel.endsWith('tab') ? [panel] : [];
    });
  }

  /**
   * What is named turns, and one part that is not named lies still: the base on the table, else other walls where walls are named, else the
   * largest part that nothing named is glued to. Each panel turns on the line that leads there.
   */
  #hinges(panels: readonly string[]): readonly Line[] {
    const named = new Set(panels);
    const areas = new Map(this.#card.panels.map(({ name, area }) => [name, area]));
    const turning = new Set<Line>();
    const left = new Set(panels);
    while (left.size > 0) {
      const [start = ''] = left;
      const reached = this.#spread([start], () => true);
      const still = this.#largest(
        reached.panels.filter((panel) => !named.has(panel)),
        named,
        areas,
      );
      const found = this.#spread(still, () => true);
      for (const [panel, line] of found.by) if (named.has(panel) && line.turns) turning.add(line);
      for (const panel of reached.panels) left.delete(panel);
    }
    return [...turning];
  }

  #largest(
    free: readonly string[],
    named: ReadonlySet<string>,
    areas: ReadonlyMap<string, number>,
  ): readonly string[] {
    const rest = new Set(free);
    const parts: { readonly panels: readonly string[]; readonly area: number }[] = [];
    while (rest.size > 0) {
      const [start = ''] = rest;
      const { panels } = this.#spread([start], (panel) => !named.has(panel));
      for (const panel of panels) rest.delete(panel);
      parts.push({ panels, area: panels.reduce((sum, panel) => sum + (areas.get(panel) ?? 0), 0) });
    }
    const isCarried = (panel: string): boolean =>
      this.#pressed.some((pair) => pair.includes(panel) && pair.some((other) => named.has(other)));
    const own = parts.filter(({ panels }) => !panels.some(isCarried));
    const onTable = parts.find(({ panels }) => panels.includes('base'));
    const nouns = new Set([...named].map(nounOf));
    const alike = own.filter(({ panels }) => panels.some((panel) => nouns.has(nounOf(panel))));
    const [first, second] = (onTable ? [onTable] : alike.length > 0 ? alike : own).sort(
      (a, b) => b.area - a.area,
    );
    if (!first) throw new Unreadable('nothing lies still');
    if (second && second.area > first.area * 0.9999) throw new Unreadable('which part lies still?');
    return first.panels;
  }

  /** Every panel that hangs together with these, and the line each is reached by. */
  #spread(
    from: readonly string[],
    may: (panel: string) => boolean,
  ): { readonly panels: string[]; readonly by: Map<string, Line> } {
    const panels = [...from];
    const by = new Map<string, Line>();
    for (let i = 0; i < panels.length; i++)
      for (const line of this.#card.lines) {
        const [one, other] = line.between;
        const next = one === panels[i] ? other : other === panels[i] ? one : null;
        if (next === null || panels.includes(next) || !may(next)) continue;
        panels.push(next);
        by.set(next, line);
      }
    return { panels, by };
  }

  #way(from: string, to: string): readonly Line[] {
    const { by } = this.#spread([from], () => true);
    const way: Line[] = [];
    for (let at = to; at !== from; ) {
      const line = by.get(at);
      if (!line) return [];
      way.push(line);
      at = line.between.find((panel) => panel !== at) ?? from;
    }
    return way;
  }
}
