const KEY = 'pullstack.marks';
/** More on walls that do not hang are forgotten, the oldest first. */
const MOST_ELSEWHERE = 2000;

type Place = Pick<Storage, 'getItem' | 'setItem'>;

/** Keeps what is selected for the next load of the page, in this tab alone, on whichever walls it hangs. */
export class KeptMarks {
  private readonly place: () => Place;
  /** Picture keys of what is selected on this wall and others; null until they are read. */
  private marks: Set<string> | null = null;
  /** Of these, what did not hang since the page was loaded. */
  private awaited = new Set<string>();

  /** @param place where it is kept; may throw, as browsers do that keep nothing */
  constructor(place: () => Place) {
    this.place = place;
  }

  private read(): Set<string> {
    if (this.marks !== null) return this.marks;
    this.marks = new Set(this.before());
    this.awaited = new Set(this.marks);
    return this.marks;
  }

  private before(): readonly string[] {
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
    const marks = this.read();
    const back = this.awaited.size === 0 ? [] : keys.flatMap((key, i) => (this.awaited.delete(key) && !selected.has(i) ? [i] : []));
    const now = back.length === 0 ? selected : new Set([...selected, ...back]);
    // A wall of 10,000 without marks is not gone through.
    if (marks.size > 0 || now.size > 0) keys.forEach((key, i) => (now.has(i) ? marks.add(key) : marks.delete(key)));
    const here = new Set(now.size === 0 ? [] : keys.filter((_, i) => now.has(i)));
    const elsewhere = [...marks].filter((key) => !here.has(key)).slice(-MOST_ELSEWHERE);
    try {
      this.place().setItem(KEY, JSON.stringify([...elsewhere, ...here]));
    } catch {
      // Without a place to keep them marks last as long as the page.
    }
    return now;
  }
}

export const keptMarks = new KeptMarks(() => sessionStorage);
