import { defined } from '../../base/at.ts';
import type { Problem } from '../../base/error.ts';
import { say } from '../../words/en/shapes/read.ts';

/** A place in a file, counted from 1. */
export interface Place {
  line: number;
  column: number;
}

/** Stops the reading of one file; never leaves the folder. */
export class FileFault extends Error {
  readonly code: string;
  readonly where: string;

  constructor(code: string, message: string, where: string) {
    super(message);
    this.name = 'FileFault';
    this.code = code;
    this.where = where;
  }
}

/** Why things of one kind are left out or taken otherwise. */
export interface Reason {
  code: string;
  /** The sentence after the file's name, of so many of them. */
  said: (count: number) => string;
}

/** 'line 3, column 7'. */
export function placeText(place: Place): string {
  return say.lineColumn(place.line, place.column);
}

/** Text from a file, short and on one line, for a sentence. */
export function quote(text: string, length = 40): string {
  const plain = text.slice(0, length * 2).replaceAll(/\p{Cc}/gu, ' ').trim();
  return plain.length > length || text.length > length * 2 ? `${plain.slice(0, length)}…` : plain;
}

/** Gathers the sentences about one file, one a kind. */
export class FaultList {
  readonly fileName: string;
  private readonly list: Problem[] = [];
  private readonly kinds = new Map<string, { count: number; at: number }>();

  constructor(fileName: string) {
    this.fileName = fileName;
  }

  /**
   * Something was left out; the sentence counts all of its kind, and its place is that of the first.
   * @param element its name without brackets
   */
  leftOut({ code, said }: Reason, element: string, place: Place): void {
    let kind = this.kinds.get(code);
    if (kind === undefined) {
      kind = { count: 0, at: this.list.length };
      this.kinds.set(code, kind);
      this.list.push({ code, message: '', where: `<${quote(element)}> at ${placeText(place)}` });
    }
    kind.count++;
    defined(this.list[kind.at]).message = `${this.fileName}: ${said(kind.count)}`;
  }

  /** Something was taken in one of several ways: said of the file as a whole, once. */
  say(code: string, rest: string): void {
    const message = `${this.fileName}: ${rest}`;
    if (!this.list.some((one) => one.message === message)) this.list.push({ code, message, where: 'file' });
  }

  /** The file cannot be used. */
  refuse(code: string, rest: string, where = 'file'): FileFault {
    return new FileFault(code, `${this.fileName}: ${rest}`, where);
  }

  get empty(): boolean {
    return this.list.length === 0;
  }

  all(): Problem[] {
    return [...this.list];
  }
}
