import { CurvePoints } from './curve-points';
import { type At, readLength, readLengths, readPlace, type Unit, Unreadable } from './lengths';
import { repeated } from './repeats';
import { TableCard } from './table-card';

/** A step as it is printed: its sentence, the rows below it, and the points of its curves. */
export interface PrintedStep {
  readonly headline: string;
  readonly details: readonly string[];
  readonly template: readonly string[];
}

interface Tape {
  readonly face: string;
  readonly strips: number;
  readonly length: number;
}

export interface ReadBack {
  readonly card: TableCard;
  /** Scores fold away from the side they were pressed on. */
  readonly overBead: boolean;
  readonly tape: readonly Tape[];
  /** Pieces of ribbon, each as long as it is cut. */
  readonly ribbon: readonly number[];
}

/** The card that a stranger makes who has nothing but the printed words. */
export function readPrinted(steps: readonly PrintedStep[], unit: Unit, fence: 'left' | 'right'): ReadBack {
  const reader = new Reader(unit, fence);
  for (const step of steps) reader.step(step);
  return reader.done();
}

class Reader {
  readonly #unit: Unit;
  readonly #fence: 'left' | 'right';
  #size: At | null = null;
  #card: TableCard | null = null;
  #overBead = true;
  readonly #tape: Tape[] = [];
  readonly #ribbon: number[] = [];
  #lastTurn = 0;
  #before: (() => void)[] = [];
  #now: (() => void)[] = [];
  readonly #curves: CurvePoints;

  constructor(unit: Unit, fence: 'left' | 'right') {
    this.#unit = unit;
    this.#fence = fence;
    this.#curves = new CurvePoints(unit);
  }

  step({ headline, details, template }: PrintedStep): void {
    this.#now = [];
    for (const row of template) this.#curves.read(row);
    for (const sentence of headline.split(/(?<=\.) (?=[A-Z\d])/)) this.#sentence(sentence);
    for (const row of details) this.#sentence(row);
    this.#before = this.#now;
  }

  done(): ReadBack {
    return { card: this.#lying(), overBead: this.#overBead, tape: this.#tape, ribbon: this.#ribbon };
  }

  /** Only cut so far, and no side named: it lies any way up. */
  #lying(): TableCard {
    if (!this.#size) throw new Unreadable('nothing is cut yet');
    this.#card ??= new TableCard(...this.#size, true, this.#fence);
    return this.#card;
  }

  #act(act: () => void): void {
    this.#now.push(act);
    act();
  }

  #sentence(sentence: string): void {
    for (const [pattern, read] of this.#sentences) {
      const found = pattern.exec(sentence);
      if (found) {
        read(found.slice(1));
        return;
      }
    }
    throw new Unreadable(sentence);
  }

  readonly #sentences: readonly (readonly [RegExp, (words: string[]) => void])[] = [
    [
      /^Cut (?!\d+, from )(\d.*) × (.+)\.$/,
      ([across = '', up = '']) => {
        if (this.#size) throw new Unreadable('cut a second time');
        this.#size = [readLength(across, this.#unit), readLength(up, this.#unit)];
      },
    ],
    [
      /^(Good side|Inside) up(?:, (half turn|quarter turn (?:counter)?clockwise) from the drawing)?\.$/,
      ([side, turn]) => {
        if (!this.#size || this.#card) throw new Unreadable('which side is up?');
        this.#card = new TableCard(...this.#size, side === 'Good side', this.#fence);
        if (turn !== undefined) this.#card.turn(/half/.test(turn) ? 2 : /counter/.test(turn) ? 1 : -1);
      },
    ],
    [/^Turn back\.$/, () => this.#turn(0 - this.#lastTurn)],
    [
      /^(half turn|quarter turn (?:counter)?clockwise)(; the same)?\.$/i,
      ([turn = '', same]) => {
        this.#turn(/half/i.test(turn) ? 2 : /counter/.test(turn) ? 1 : -1);
        if (same) for (const act of this.#before) this.#act(act);
      },
    ],
    [
      /^Turn (?:over left to right, )?(good side|inside) up\.$/,
      ([side]) => {
        const card = this.#lying();
        card.turnOver();
        if (card.goodUp !== (side === 'good side')) throw new Unreadable(`the ${side} is up already`);
      },
    ],
    [
      /^Do the same at the top\.$/,
      () => {
        for (const act of this.#before) this.#act(act);
      },
    ],
    [
      /^(Score|Slit) at (.+), from (.+) up\.$/,
      ([verb, at = '', stops = '']) => {
        const marks = readLengths(at, this.#unit);
        const [, far] = this.#lying().lying;
        const spans = stops.includes(' to ')
          ? stops
              .split(/, | and /)
              .map((span) => span.split(' to ').map((end) => readLength(end, this.#unit)))
          : [[readLength(stops, this.#unit), far]];
        for (const [from = 0, to = 0] of spans) {
          if (to <= from) throw new Unreadable(stops);
          for (const mark of marks) this.#line(verb === 'Slit', [mark, from], [mark, to]);
        }
      },
    ],
    [
      /^Score at (.+)\.$/,
      ([at = '']) => {
        for (const mark of readLengths(at, this.#unit))
          this.#act(() => {
            const card = this.#lying();
            card.score([mark, 0], [mark, card.lying[1]]);
          });
      },
    ],
    [
      /^Slit the lower (.+) at (.+)\.$/,
      ([up = '', at = '']) => {
        for (const mark of readLengths(at, this.#unit))
          this.#line(true, [mark, 0], [mark, readLength(up, this.#unit)]);
      },
    ],
    [
      /^Cut away (?:the (.+) corners?|all four corners): (.+) × (.+)\.$/,
      ([which, across = '', up = '']) => {
        const size: At = [readLength(across, this.#unit), readLength(up, this.#unit)];
        const named = which?.split(/, | and /) ?? ['near left', 'near right', 'far left', 'far right'];
        for (const corner of named) this.#corner(corner, size);
      },
    ],
    [
      /^(Score|Slit|Snip) from (.+?)(; keep the smaller part)?(?:; the same (.+))?\.$/,
      ([verb, ways = '', smaller, same]) => {
        for (const way of ways.split(', and from ')) {
          const points = way.split(' to ').map((place) => readPlace(place, this.#unit));
          for (const run of this.#again(points, same))
            for (const [i, b] of run.entries()) {
              const a = run[i - 1];
              if (!a) continue;
              if (verb === 'Snip') this.#cut([a, b], smaller !== undefined);
              else this.#line(verb === 'Slit', a, b);
            }
        }
      },
    ],
    [
      /^Cut corner to corner, across × up\.(?: Cut along the template\.)?$|^(?:Score|Cut) along the template\.$|^Cut out the holes\.$/,
      () => undefined,
    ],
    [
      /^(\d.* × .+?)(; keep the smaller part)?(?:; the same (.+))?\.$/,
      ([way = '', smaller, same]) => {
        const points = way.split(', ').map((place) => readPlace(place, this.#unit));
        for (const run of this.#again(points, same)) this.#cut(run, smaller !== undefined);
      },
    ],
    [
      /^Cut out the window from (.+) to (.+)\.$/,
      ([from = '', to = '']) => {
        const [[left, low], [right, high]] = [readPlace(from, this.#unit), readPlace(to, this.#unit)];
        this.#hole([
          [left, low],
          [right, low],
          [right, high],
          [left, high],
        ]);
      },
    ],
    [
      /^Cut out the window with corners (.+)\.$/,
      ([corners = '']) => this.#hole(corners.split(', ').map((place) => readPlace(place, this.#unit))),
    ],
    [
      /^(Curve \d+), from (.+) to (.+), (.+) deep\.$/,
      ([name = '', from = '', to = '', deep = '']) => {
        const points = this.#curves.asDeep(name, from, to, deep);
        for (const [i, point] of points.slice(1).entries()) this.#line(false, points[i] as At, point);
      },
    ],
    [
      /^(Cut \d+), from (.+) to (.+?)(; keep the smaller part)?\.$/,
      ([name = '', from = '', to = '', smaller]) =>
        this.#cut(this.#curves.between(name, from, to), smaller !== undefined),
    ],
    [
      /^(Hole \d+): ([a-z ]+), (.+), middle at (.+)\.$/,
      ([name = '', , size = '', middle = '']) => this.#hole(this.#curves.hole(name, size, middle)),
    ],
    [
      /^Fold every score right over(?:, (away from|towards) its scored side)?; rub down, open\.$/,
      ([way]) => {
        this.#overBead = way !== 'towards';
      },
    ],
    [
      /^Tape (.+)\.$/,
      ([what = '']) => {
        for (const each of what.split(/, and (?=the (?:inside|outside) of )/)) {
          const [, face = '', panels = '', strips = '1', long = ''] =
            /^the (inside|outside) of (.+?), (?:(\d+) strips of )?([^,]+?)(?: each)?$/.exec(each) ?? [];
          if (panels === '') throw new Unreadable(each);
          const length = readLength(long, this.#unit);
          this.#act(() => this.#tape.push({ face, strips: Number(strips), length }));
        }
      },
    ],
    [
      /^Thread (.+) of ribbon through .+\.$/,
      ([long = '']) => this.#ribbon.push(readLength(long, this.#unit)),
    ],
    [
      /^(?:Fold|Roll up|Tuck|Press|Bring|Dab liquid glue on) .+\.$|^Open and (?:square|tuck) it(?: in)?\.$/,
      () => undefined,
    ],
  ];

  #turn(quartersLeft: number): void {
    this.#lastTurn = quartersLeft;
    this.#lying().turn(quartersLeft);
  }

  #line(isSlit: boolean, a: At, b: At): void {
    this.#act(() => (isSlit ? this.#lying().slit(a, b) : this.#lying().score(a, b)));
  }

  #cut(points: readonly At[], smaller: boolean): void {
    this.#act(() => this.#lying().cut(points, smaller));
  }

  #hole(ring: readonly At[]): void {
    this.#act(() => this.#lying().hole(ring));
  }

  /** Left and right as eyes see them; the first number is measured from the fence. */
  #corner(name: string, [across, up]: At): void {
    this.#act(() => {
      const [wide, high] = this.#lying().lying;
      const [end, side] = name.split(' ');
      const atFence = side === this.#fence;
      const [x, edge] = atFence ? [across, 0] : [wide - across, wide];
      const [y, rim] = end === 'near' ? [up, 0] : [high - up, high];
      this.#lying().cut(
        [
          [edge, y],
          [x, y],
          [x, rim],
        ],
        false,
      );
    });
  }

  #again(points: readonly At[], same: string | undefined): (readonly At[])[] {
    return repeated(points, same, this.#lying().lying, this.#unit);
  }
}
