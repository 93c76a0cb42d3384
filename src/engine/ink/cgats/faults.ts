import type { Problem } from '../../base/error.ts';
import { say } from '../../words/en/ink/cgats.ts';

const MOST = 100;

/** A place in the file, both from 1. */
export interface Place {
  line: number;
  column: number;
}

/** Gathers what is wrong with one file, each fault a sentence with its place, at most 100 and a count. */
export class CgatsFaults {
  private readonly fileName: string;
  private readonly list: Problem[] = [];
  private more = 0;

  constructor(fileName: string) {
    this.fileName = fileName;
  }

  /** @param sentence what is wrong and how to mend it, without file and place */
  tell(code: string, { line, column }: Place, sentence: string): void {
    if (this.list.length >= MOST) {
      this.more++;
      return;
    }
    const where = `line ${line}, column ${column}`;
    this.list.push({ code, message: `${this.fileName}, ${where}: ${sentence}`, where });
  }

  /** All that was told. */
  all(): Problem[] {
    if (this.more === 0) return this.list;
    const message = say.moreFaultsLikeThese(this.fileName, this.more);
    return [...this.list, { code: 'cgats.more', message, where: 'line 1, column 1' }];
  }
}

/** A value from the file for a message, cut to a readable length. */
export function quote(text: string): string {
  return `“${text.length > 30 ? `${text.slice(0, 30)}…` : text}”`;
}
