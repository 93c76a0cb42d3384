/** Keeps what was asked for lately, so many at most: the one that was not asked for longest goes first. */
export class LatelyUsed<Value> {
  private readonly most: number;
  /** In order of use, the last used last. */
  private readonly known = new Map<string, Value>();

  /** @param most how many are kept, 1 or more */
  constructor(most: number) {
    this.most = most;
  }

  get size(): number {
    return this.known.size;
  }

  get(name: string): Value | undefined {
    const value = this.known.get(name);
    if (value === undefined) return undefined;
    this.known.delete(name);
    this.known.set(name, value);
    return value;
  }

  set(name: string, value: Value): void {
    this.known.delete(name);
    this.known.set(name, value);
    for (const old of [...this.known.keys()].slice(0, Math.max(0, this.known.size - this.most))) this.known.delete(old);
  }

  delete(name: string): void {
    this.known.delete(name);
  }
}
