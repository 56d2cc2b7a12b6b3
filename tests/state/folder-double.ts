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

  write(_handle: object, name: string, text: string) {
    if (this.trouble) return Promise.resolve(this.trouble);
    this.files.set(name, text);
    this.written.push(name);
    return Promise.resolve(null);
  }
}
