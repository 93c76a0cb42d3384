import type { Pull } from '../../engine/stack/types.ts';

/**
 * Has pulls that came from another thread share their names. Each pull comes with copies of its own, and those of
 * ten thousand prints take as much room as all else that is known of them.
 */
export class SharedNames {
  private readonly names = new Map<string, string>();

  private shared(name: string): string {
    const known = this.names.get(name);
    if (known !== undefined) return known;
    this.names.set(name, name);
    return name;
  }

  /** @param names nobody else has the list yet */
  shareAll(names: string[]): void {
    names.forEach((name, i) => {
      names[i] = this.shared(name);
    });
  }

  /** @param pulls nobody else has them yet */
  share(pulls: readonly Pull[]): void {
    for (const pull of pulls) {
      pull.id = this.shared(pull.id);
      pull.screen = this.shared(pull.screen);
      pull.ink = this.shared(pull.ink);
    }
  }
}
