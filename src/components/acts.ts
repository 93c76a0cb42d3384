/** Something done beside the project, such as a tick at the press, and how it is taken back. */
export interface Act {
  label: string;
  undo(): void;
  /** Does it once more after it was taken back; absent = that cannot be. */
  redo?: (() => void) | undefined;
  /** Whether it still is of what is open, such as the visit at the press; absent = always. */
  stands?: (() => boolean) | undefined;
}

/** An act and what of the project was done last before it: it is taken back once that is the last step again. */
interface Done extends Act {
  after: unknown;
}

/** Acts further back are forgotten: a day at the press has hundreds. */
const MOST_ACTS = 500;

/** Acts beside the project in the order in which they were done, between its steps; each is taken back before what it was done upon. */
export class Acts {
  private done: Done[] = [];
  private undone: Done[] = [];

  /** @param after what of the project was done last before it, the same object as long as it is */
  add(act: Act, after: unknown): void {
    this.done = [...this.done, { ...act, after }].slice(-MOST_ACTS);
    this.undone = [];
  }

  /** What is taken back next when the project's last step is `step`; null when that step is. */
  last(step: unknown): Act | null {
    const act = this.done.findLast(({ stands }) => stands?.() !== false);
    return act !== undefined && act.after === step ? act : null;
  }

  /** What is done again next when the project's last step is `step`; null when a step of the project is. */
  next(step: unknown): Act | null {
    const act = this.undone.at(-1);
    return act !== undefined && act.after === step && act.stands?.() !== false ? act : null;
  }

  /** @returns whether there was an act to take back */
  undo(step: unknown): boolean {
    const act = this.last(step);
    if (act === null) return false;
    this.done = this.done.filter((each) => each !== act && each.stands?.() !== false);
    this.undone = act.redo === undefined ? [] : [...this.undone, act as Done];
    act.undo();
    return true;
  }

  /** @returns whether there was an act to do again */
  redo(step: unknown): boolean {
    const act = this.next(step);
    if (act === null) return false;
    this.undone = this.undone.slice(0, -1);
    this.done = [...this.done, act as Done];
    act.redo?.();
    return true;
  }

  /** What was taken back cannot be done again: something else was done. */
  goOn(): void {
    this.undone = [];
  }

  clear(): void {
    this.done = [];
    this.undone = [];
  }
}
