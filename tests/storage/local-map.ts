/** The part of a browser's local storage that we use, on a map; it can be full. */
export class LocalMap {
  readonly map = new Map<string, string>();
  isFull = false;
  getItem = (key: string) => this.map.get(key) ?? null;
  setItem = (key: string, value: string) => {
    if (this.isFull) throw new DOMException('no room', 'QuotaExceededError');
    this.map.set(key, value);
  };
  removeItem = (key: string) => void this.map.delete(key);
  key = (index: number) => [...this.map.keys()][index] ?? null;
  get length() {
    return this.map.size;
  }
}
