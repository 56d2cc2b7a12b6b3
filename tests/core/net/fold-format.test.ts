import { describe, expect, it } from 'vitest';
import { layNet } from '../../../src/core/net';
import { foldTextOf } from '../../../src/core/net/fold-format';
import { readFold } from '../../../src/core/net/read-fold';
import { STYLES } from '../../../src/core/styles';

describe('a net saved as FOLD', () => {
  it.each(STYLES.map((style) => [style.name, style] as const))(
    'is the same net when read again: %s',
    (_, style) => {
      const box = layNet(style, { sizes: {}, caliperUm: 305 });
      const reading = readFold(foldTextOf(box, style.name));
      expect(reading).toMatchObject({ ok: true, title: style.name });
      if (reading.ok) expect(reading.pieces).toEqual(box.pieces);
    },
  );
});
