import type { FolderDoor, FolderTrouble } from '../../src/state/ports';

/** A folder that remembers what was put into it, and refuses as it is told. */
export class FolderDouble implements FolderDoor {
  readonly files = new Map<string, string>();
  /** Every name that was written, in order. */
  readonly written: string[] = [];
  allowed = true;
  /** What she answers when she is asked. */
  answer = true;
  picks = true;
  asked = 0;
  /** Files come out shorter than they went in. */
  cuts = false;
  trouble: FolderTrouble | null = null;

  pick() {
    return Promise.resolve(this.picks ? { handle: { folder: 'Boxes' }, name: 'Boxes' } : null);
  }

  mayWrite(_handle: object, ask: boolean) {
    if (ask) {
      this.asked++;
      this.allowed ||= this.answer;
    }
    return Promise.resolve(this.allowed);
  }

  list() {
    return Promise.resolve([...this.files.keys()]);
  }

  read(_handle: object, name: string) {
    return Promise.resolve(this.files.get(name) ?? null);
  }

  drop(_handle: object, name: string) {
    this.files.delete(name);
    return Promise.resolve();
  }

  /** What lies there under the newest name. */
  get newest(): string | undefined {
    const stamps = [...this.files.keys()]
      .filter((name) => name.startsWith('crease'))
      .map((name) => name.slice(0, -5));
    return this.files.get(`${stamps.sort().at(-1)}.json`);
  }

  write(_handle: object, name: string, text: string) {
    if (this.trouble) return Promise.resolve(this.trouble);
    this.files.set(name, this.cuts ? text.slice(0, -9) : text);
    this.written.push(name);
    return Promise.resolve(null);
  }
}
