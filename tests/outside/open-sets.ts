import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readInstances, type YieldInstance } from '../../shared/yield-instances';

/** A folder with larger sets of cutting problems of the literature, a JSON list a file; they are not ours to keep here. */
export const OPEN_SETS = process.env['CREASE_OPEN_SETS'];

export interface OpenInstance {
  readonly instance: YieldInstance;
  readonly optimum: number;
}

/** The instances of one file of that folder with their published optimum; none if the folder or the file is missing. */
export function openSet(file: string): readonly OpenInstance[] {
  const path = OPEN_SETS === undefined ? '' : join(OPEN_SETS, `${file}.json`);
  if (path === '' || !existsSync(path)) return [];
  const text = readFileSync(path, 'utf8');
  const reading = readInstances(text);
  if (!reading.ok) throw new Error(`${path}: ${JSON.stringify(reading.refusals)}`);
  const optima: readonly { readonly optimum: number }[] = JSON.parse(text);
  return reading.instances.flatMap((instance, at) =>
    'sheet' in instance ? [{ instance, optimum: optima[at]!.optimum }] : [],
  );
}
