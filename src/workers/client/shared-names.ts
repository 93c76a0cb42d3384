/** Has what comes from another thread share its names: each batch of prints comes with copies of its own. */
export class SharedNames {
  private readonly names = new Map<string, string>();

  private shared(name: string): string {
    const known = this.names.get(name);
    if (known !== undefined) return known;
    this.names.set(name, name);
    return name;
  }

  /** @param names nobody else has the list yet */
  share(names: string[]): void {
    names.forEach((name, i) => {
      names[i] = this.shared(name);
    });
  }
}
