import { describe, expect, test } from 'vitest';
import { type BenchTool, cardSteps, deriveProgram } from '../../../../src/core/bench';
import { layNet } from '../../../../src/core/net';
import { type BoxStyle, styleById } from '../../../../src/core/styles';
import { inches, millimetres, type Ticks } from '../../../../src/core/units';
import { board, metricTrimmer, trimmer } from '../bench-tools';

function cardOf(
  id: string,
  sizes: Readonly<Record<string, Ticks>> = {},
  tool: BenchTool = trimmer,
  faceUp: 'inside' | 'outside' = 'inside',
) {
  const trade = id === 'open-top' ? { flap: inches(1, 1, 2) } : {};
  const box = layNet(styleById(id) as BoxStyle, {
    sizes: { ...trade, ...sizes },
    caliperUm: 300,
    mark: tool.finestMark,
  });
  return box.pieces.map((piece) => cardSteps(deriveProgram(piece, tool, { faceUp }), piece, box, tool));
}

const said = (steps: ReturnType<typeof cardOf>[number] = []) => steps.map(({ headline }) => headline);
const tips = (steps: ReturnType<typeof cardOf>[number] = []) => steps.flatMap((step) => step.tips);

describe('the trade’s own card (common practice, no source)', () => {
  test('3 1/2 × 1 1/2 × 3 in words', () => {
    expect(said(cardOf('open-top')[0]).slice(0, 5)).toEqual([
      'Cut 11 × 4 1/2 in.',
      'Inside up. Score at 3 1/2, 5, 8 1/2 and 10 in.',
      'Quarter turn counterclockwise. Score at 3 in.',
      'Turn back. Slit the lower 1 1/2 in at 3 1/2, 5 and 8 1/2 in.',
      'Cut away the near right corner: 1 × 1 9/16 in. Snip from 10 × 1 9/16 to 11 × 1 7/8, and from 11 × 4 3/16 to 10 × 4 1/2.',
    ]);
  });

  test('closing it, with the tips a practised maker gives', () => {
    const [steps = []] = cardOf('open-top');
    expect(said(steps).slice(5)).toEqual([
      'Fold every score right over, towards its scored side; rub down, open.',
      'Fold the right wall over.',
      'Tape the outside of the tab, 2 15/16 in. Fold the front wall over onto it.',
      'Open and square it.',
      'Fold the left flap in, then the right flap.',
      'Tape the inside of the front flap, 4 strips of 1 1/2 in. Fold it in onto the left and right flaps.',
      'Tape the inside of the back flap, 2 strips of 3 1/2 in. Fold it in onto the front flap.',
    ]);
    expect(tips(steps)).toEqual([
      'Stop at the cross score.',
      'Pare 1/32 in off each side of the inner bottom flaps.',
      'Too narrow for a hand: press the bottom with a bone folder.',
    ]);
  });

  test('big numbers are printed as the tool is marked', () => {
    const [, scores] = cardOf('open-top')[0] ?? [];
    expect(scores?.marks.map(({ printed, reads }) => `${printed.typographic} ${reads}`)).toEqual([
      '3½ in from the fence',
      '5 in from the fence',
      '8½ in from the fence',
      '10 in from the fence',
    ]);
  });

  test('blades and hot glue are cautioned where they are used', () => {
    const [steps = []] = cardOf('open-top');
    const cautioned = (code: string) =>
      steps.filter(({ cautions }) => cautions.some((one) => one === code)).map(({ id }) => id);
    expect(cautioned('blade')).toEqual(['blank-1', 'slit-1', 'cut-1']);
    expect(cautioned('hot-glue')).toEqual(['glue-1', 'glue-2', 'glue-3']);
  });
});

describe('tips only where the numbers call for them', () => {
  test('a box that takes a hand says nothing of a bone folder inside', () => {
    const wide = cardOf('open-top', {
      width: inches(4),
      depth: inches(4),
      height: inches(4),
      flap: inches(3),
    });
    expect(tips(wide[0]).join()).not.toContain('Too narrow for a hand');
  });

  test('a blank longer than the trimmer cuts is cut with a knife', () => {
    const long = cardOf('open-top', { width: inches(6), depth: inches(2) });
    expect(tips(long[0])).toContain('Longer than the trimmer cuts: use a knife and metal ruler.');
  });

  test('a strip a sixteenth wide is not for the trimmer', () => {
    expect(tips(cardOf('tray-lid')[0]).join()).toContain('Narrow strip');
    expect(tips(cardOf('open-top')[0]).join()).not.toContain('Narrow strip');
  });

  test('a fence that is set once is said to stay, on a trimmer', () => {
    const stays = (tool: BenchTool) =>
      tips(cardOf('tray-lid', {}, tool)[0]).filter((tip) => tip === 'Same fence setting.');
    expect(stays(trimmer)).toHaveLength(3);
    expect(stays(board)).toHaveLength(0);
    expect(tips(cardOf('open-top')[0])).not.toContain('Same fence setting.');
  });

  test('a tray needs no flaps pared, but the feet of its tabs', () => {
    const told = tips(cardOf('tray-lid')[0]).join();
    expect(told).not.toContain('flaps');
    expect(told).toContain('Pare 1/32 in off the foot of the corner tabs.');
  });
});

describe('inch and metric, either face, either hand', () => {
  test('metric sizes on a metric trimmer', () => {
    // 90 + 40 + 90 + 40 + 25 = 285; 75 + 40 = 115.
    const mm = (length: number): Ticks => millimetres(length);
    const [steps] = cardOf(
      'open-top',
      { width: mm(90), depth: mm(40), height: mm(75), tab: mm(25), flap: mm(40) },
      metricTrimmer,
    );
    expect(said(steps).slice(0, 3)).toEqual([
      'Cut 285 × 115 mm.',
      'Inside up. Score at 90, 130, 220 and 260 mm.',
      'Quarter turn clockwise. Score at 40 mm.',
    ]);
  });

  test('between the marks the card says which way it leans, and the whole truth', () => {
    // 3 1/2 in is 88.9 mm: a hair short of 89.
    const [, scores] = cardOf('open-top', {}, { ...metricTrimmer })[0] ?? [];
    expect(scores?.headline).toContain('89 mm scant (88.9 mm)');
    expect(scores?.tips.join()).toContain('scant a hair short');
  });

  test('outside up says so, and left and right change places', () => {
    const [steps] = cardOf('open-top', {}, trimmer, 'outside');
    const words = said(steps).join(' ');
    expect(words).toContain('Good side up.');
    // It is turned over top to bottom, so that the tab stays at the right: the same numbers, and the flaps lie away from hands.
    expect(words).toContain('Score at 3 1/2, 5, 8 1/2 and 10 in.');
    expect(words).toContain('Slit at 3 1/2, 5 and 8 1/2 in, from 3 in up.');
    expect(words).toContain('Cut away the far right corner');
    expect(words).toContain('Turn inside up. Fold every score right over; rub down, open.');
  });

  test('with the fence on the right the card is turned first, and the tab lies away from the fence', () => {
    const words = said(cardOf('open-top', {}, { ...trimmer, fence: 'right' })[0]).join(' ');
    expect(words).toContain('Inside up, half turn from the drawing.');
    expect(words).toContain('Score at 3 1/2, 5, 8 1/2 and 10 in.');
    expect(words).toContain('Cut away the far left corner');
    // Good side up it lies as it is drawn.
    const over = said(cardOf('open-top', {}, { ...trimmer, fence: 'right' }, 'outside')[0]).join(' ');
    expect(over).toContain('Good side up, half turn from the drawing.');
  });

  test('a grooved board asks for no fence but the same marks', () => {
    expect(said(cardOf('open-top', {}, board)[0])[1]).toBe('Inside up. Score at 3 1/2, 5, 8 1/2 and 10 in.');
  });
});
