import { expect, test } from 'vitest';
import { looseEnds } from '../../../src/core/proof';
import { STYLES } from '../../../src/core/styles';

/** Looked at on each net by hand: what of ours is held by no tab, and what holds it instead. */
const HELD_OTHERWISE: Readonly<Record<string, { readonly by: string; readonly edges: readonly string[] }>> = {
  'opening-out': { by: 'its lid', edges: ['front.left', 'front.right', 'back.left', 'back.right'] },
  'square-pyramid': { by: 'a ribbon', edges: ['front.e1', 'right.e1', 'back.e1', 'left.e1'] },
  'envelope-box': {
    by: 'the flaps over it',
    edges: ['leftSpine.down', 'leftSpine.up', 'rightSpine.down', 'rightSpine.up'],
  },
};

test.each(STYLES.map((style) => [style.id, style] as const))(
  '%s: only corners that something other than a tab holds are told, and nothing else of it',
  (id, style) => {
    const told = looseEnds(style).map(({ code, path }) => `${code} ${path.slice(path.indexOf('.') + 1)}`);
    const corners = HELD_OTHERWISE[id]?.edges.map((edge) => `no-tab-at-corner ${edge}`) ?? [];
    expect([...told].sort()).toEqual([...corners].sort());
  },
);
