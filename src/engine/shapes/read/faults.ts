import type { Problem } from '../../base/error.ts';
import { MAX_PROBLEMS } from './limits.ts';

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

/** 'line 3, column 7'. */
export function placeText(place: Place): string {
  return `line ${place.line}, column ${place.column}`;
}

/** Text from a file, short and on one line, for a sentence. */
export function quote(text: string, length = 40): string {
  const plain = text.slice(0, length * 2).replaceAll(/\p{Cc}/gu, ' ').trim();
  return plain.length > length || text.length > length * 2 ? `${plain.slice(0, length)}…` : plain;
}

/** Gathers the sentences about one file. */
export class FaultList {
  readonly fileName: string;
  private readonly list: Problem[] = [];
  private more = 0;

  constructor(fileName: string) {
    this.fileName = fileName;
  }

  /**
   * Something was left out.
   * @param element its name without brackets
   * @param rest the sentence after `file: <element> at line n`
   */
  leftOut(code: string, element: string, place: Place, rest: string): void {
    const name = quote(element);
    const message = `${this.fileName}: <${name}> at line ${place.line} ${rest}`;
    if (this.list.length >= MAX_PROBLEMS) this.more++;
    else this.list.push({ code, message, where: `<${name}> at ${placeText(place)}` });
  }

  /** Something was taken in one of several ways: said of the file as a whole. */
  say(code: string, rest: string): void {
    this.list.push({ code, message: `${this.fileName}: ${rest}`, where: 'file' });
  }

  /** The file cannot be used. */
  refuse(code: string, rest: string, where = 'file'): FileFault {
    return new FileFault(code, `${this.fileName}: ${rest}`, where);
  }

  get empty(): boolean {
    return this.list.length === 0;
  }

  all(): Problem[] {
    if (this.more === 0) return [...this.list];
    const message = `${this.fileName}: ${this.more} more elements were left out for reasons like those above.`;
    return [...this.list, { code: 'shape.more', message, where: 'file' }];
  }
}
