import { describe, expect, test } from 'vitest';
import { Allowance } from '../../src/share-server/limits';
import { readSettings } from '../../src/share-server/settings';

describe('the settings of the share server', () => {
  test('stand for this machine alone where nothing is said', () => {
    const reading = readSettings({});
    expect(reading.ok && reading.settings).toMatchObject({
      host: '127.0.0.1',
      port: 4180,
      redis: null,
      origin: null,
    });
  });

  test('open it to others only with the address at which they find it', () => {
    expect(readSettings({ SHARE_HOST: '0.0.0.0' }).ok).toBe(false);
    const reading = readSettings({ SHARE_HOST: '0.0.0.0', SHARE_ORIGIN: 'https://boxes.example.org/' });
    expect(reading.ok && reading.settings.origin).toBe('https://boxes.example.org');
  });

  test.each([
    [{ SHARE_PORT: 'ten' }, 'SHARE_PORT=ten'],
    [{ SHARE_PORT: '70000' }, 'SHARE_PORT=70000'],
    [{ SHARE_REDIS: 'http://here' }, 'redis://'],
    [{ SHARE_ORIGIN: 'boxes.example.org' }, 'https://'],
  ])('that make no sense are refused with the remedy: %j', (env, words) => {
    const reading = readSettings(env);
    expect(!reading.ok && reading.faults.join()).toContain(words);
  });
});

test('an allowance is spent at once or little by little, and comes back with time', () => {
  const allowance = new Allowance(10, 2, 0);
  expect([allowance.take(10, 0), allowance.take(1, 0)]).toEqual([true, false]);
  expect([allowance.take(2, 1000), allowance.take(1, 1000)]).toEqual([true, false]);
  expect([allowance.take(11, 60_000), allowance.take(10, 60_000)]).toEqual([false, true]);
});
