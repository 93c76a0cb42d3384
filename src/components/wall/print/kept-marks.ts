const KEY = 'pullstack.marks';

/** Keeps what is selected for the next load of the page, in this tab alone. */
export class KeptMarks {
  private readonly place: () => Pick<Storage, 'getItem' | 'setItem'>;
  private read = false;

  /** @param place where it is kept; may throw, as browsers do that keep nothing */
  constructor(place: () => Pick<Storage, 'getItem' | 'setItem'>) {
    this.place = place;
  }

  /** Picture keys of what was selected before the page was loaded; told once. */
  private before(): readonly string[] {
    if (this.read) return [];
    this.read = true;
    try {
      const kept: unknown = JSON.parse(this.place().getItem(KEY) ?? '[]');
      return Array.isArray(kept) ? kept : [];
    } catch {
      return [];
    }
  }

  /**
   * @param keys picture keys of the prints that hang, by number
   * @returns what is selected now, with what came back; the same set when nothing did
   */
  keep(selected: ReadonlySet<number>, keys: readonly string[]): ReadonlySet<number> {
    const kept = new Set(this.before());
    const back = kept.size === 0 ? [] : keys.flatMap((key, index) => (kept.has(key) && !selected.has(index) ? [index] : []));
    const now = back.length === 0 ? selected : new Set([...selected, ...back]);
    try {
      this.place().setItem(KEY, JSON.stringify([...now].map((index) => keys[index])));
    } catch {
      // Without a place to keep them marks last as long as the page.
    }
    return now;
  }
}

export const keptMarks = new KeptMarks(() => sessionStorage);
