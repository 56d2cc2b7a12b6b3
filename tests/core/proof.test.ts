import { describe, expect, it } from 'vitest';
import { type BoxStyle, defineStyle, inches, legalBoxes, proveStyle, STYLES, sayProof } from '../../src/core';
import { tray } from '../../src/core/styles/boxes/tray';

const size = (label: string, usual: BoxStyle['symbols'][string]['default']) =>
  ({ role: 'size', label, help: 'Score to score.', default: usual, min: '1 in', max: '8 in' }) as const;

/** A style from outside: a belly wrap of four walls and a glue tab, open at both ends. `fold` is how far each wall turns. */
const wrap = (fold: number, tab = 'tab') =>
  defineStyle({
    id: 'belly-wrap',
    version: 1,
    name: 'Belly wrap',
    source: 'common practice, no source',
    goodFor: 'Holding a stack of cookies.',
    watchOut: 'It is open at both ends.',
    symbols: { width: size('Width', '3 in'), depth: size('Depth', '2 in'), height: size('Height', '4 in') },
    lets: { tab: '1/2 in' },
    inside: ['width - t', 'depth - 2t', 'height'],
    pieces: {
      wrap: {
        label: 'Wrap',
        panels: {
          front: { role: 'wall', size: ['width', 'height'] },
          right: { role: 'wall', size: ['depth', 'height'], on: 'front.right', fold },
          back: { role: 'wall', size: ['width', 'height'], on: 'right.right', fold },
          left: { role: 'wall', size: ['depth', 'height'], on: 'back.right', fold },
          tab: { role: 'glueTab', size: [tab, 'height'], on: 'left.right', fold },
        },
        joints: [{ panel: 'tab', onto: 'front', lap: 'inside' }],
        seams: [['left.right', 'front.left']],
        closing: [
          { do: 'fold', panels: ['right', 'back', 'left', 'tab'] },
          { do: 'glue', panel: 'tab', onto: 'front' },
        ],
        shell: ['front', 'right', 'back', 'left'],
        roomMm3: ({ width = 0, depth = 0, height = 0 }) => width * depth * height,
      },
    },
    constraints: [],
    promises: [],
    traits: [],
  });

describe('the proof of a style, as it is published', { timeout: 120_000 }, () => {
  it('passes a style from outside', () => {
    expect(sayProof(proveStyle(wrap(90)))).toEqual(['belly-wrap: all is well at 50 boxes.']);
  });

  it.each(STYLES.map((style) => [style.id, style] as const))('passes %s', (id, style) => {
    expect(sayProof(proveStyle(style, { boxes: 10 }))).toEqual([`${id}: all is well at 10 boxes.`]);
  });

  it('a wrap whose walls turn too little does not close: said with panel, number and remedy in 15 lines', () => {
    const proof = proveStyle(wrap(85), { boxes: 10 });
    expect(proof.faults.map(({ check }) => check)).toContain('closes');
    const said = sayProof(proof);
    expect(said.length).toBeLessThanOrEqual(15);
    expect(said.join('\n')).toMatch(/left|front/);
    expect(said.join('\n')).toMatch(/\d mm \(/);
    expect(said.join('\n')).toMatch(/remedy: \w+/);
  });

  it('a name that nobody declared is a fault of the declaration, not a throw', () => {
    const { tried, faults } = proveStyle(wrap(90, 'tabb'));
    expect(tried).toBe(0);
    expect(faults).toMatchObject([{ check: 'declaration' }]);
    expect(sayProof(proveStyle(wrap(90, 'tabb'))).join(' ')).toContain('tabb');
  });

  it('a limit that stops nothing is seen', () => {
    const idle = {
      code: 'idle',
      symbol: 'width',
      atMost: 'width',
      severity: 'stop',
      says: '',
      remedy: '',
    } as const;
    const { faults } = proveStyle({ ...wrap(90), constraints: [idle] }, { boxes: 3 });
    expect(faults).toMatchObject([{ check: 'limits', where: 'width' }]);
  });

  it('the same numbers give the same boxes, and the first is the usual one', () => {
    const boxes = legalBoxes(tray, 5, () => 0.25);
    expect(boxes).toEqual(legalBoxes(tray, 5, () => 0.25));
    expect(boxes[0]?.sizes['width']).toBe(inches(4));
  });
});
