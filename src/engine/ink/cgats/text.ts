import { defined } from '../../base/at.ts';

/** A piece of text with its place, both from 1. */
export interface Token {
  text: string;
  line: number;
  column: number;
  /** Whether it stood in quotes, so that it is never a word of the format. */
  quoted: boolean;
}

/** A line of the file, or a part of one. */
export interface Line {
  text: string;
  line: number;
  /** Column of its first sign in the file, from 1. */
  column: number;
}

/** Cuts a line into tokens. */
export type Splitter = (line: Line) => Token[];

const BLANK = /\s/u;

/** Lines of a text by any of the three line ends, a byte order mark taken off. */
export function linesOf(text: string): string[] {
  return text.replace(/^\uFEFF/u, '').split(/\r\n|\n|\r/u);
}

/**
 * Tokens divided by any blanks. Quotes, double or single, hold a token together; a doubled quote
 * inside is one quote; a # where a token would begin makes the rest a comment.
 */
export const splitBlanks: Splitter = ({ text, line, column }) => {
  const tokens: Token[] = [];
  const quotes = new Quotes(text);
  let i = 0;
  while (i < text.length) {
    const char = defined(text[i]);
    if (BLANK.test(char)) {
      i++;
      continue;
    }
    if (char === '#') break;
    const end = quotes.end(i);
    if (end > 0) {
      tokens.push({ text: unquoted(text.slice(i, end)), line, column: i + column, quoted: true });
      i = end;
    } else {
      let stop = i + 1;
      while (stop < text.length && !BLANK.test(defined(text[stop]))) stop++;
      tokens.push({ text: text.slice(i, stop), line, column: i + column, quoted: false });
      i = stop;
    }
  }
  return tokens;
};

/** Cells divided by single tabs; blanks inside stay, an empty cell is a token without text. */
export const splitTabs: Splitter = ({ text, line, column: first }) => {
  if (/^\s*(?:#|$)/u.test(text)) return [];
  let column = first;
  return text.split('\t').map((cell) => {
    const lead = cell.length - cell.trimStart().length;
    const trimmed = cell.trim();
    const quoted = trimmed.length > 1 && new Quotes(trimmed).end(0) === trimmed.length;
    const token = { text: quoted ? unquoted(trimmed) : trimmed, line, column: column + lead, quoted };
    column += cell.length + 1;
    return token;
  });
};

/**
 * A number as instruments write it, with a decimal point or comma.
 * @returns NaN for anything else
 */
export function numberOf(text: string): number {
  return /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?$/iu.test(text) ? Number(text.replace(',', '.')) : NaN;
}

/** Finds where quoted tokens of a line end; asked from left to right, it looks at each sign once or twice. */
class Quotes {
  private readonly text: string;
  /** By quote the closing one that was found last, and from where it was looked for. */
  private readonly found = new Map<string, { from: number; at: number }>();

  constructor(text: string) {
    this.text = text;
  }

  /** Where the quoted token that begins at i ends, or 0 when none does: inch marks stay text. */
  end(i: number): number {
    const { text } = this;
    const quote = defined(text[i]);
    if (quote !== '"' && quote !== "'") return 0;
    let run = i;
    while (text[run] === quote) run++;
    // The first of them opens; of the others two are one quote, and one that is left over closes.
    if ((run - i) % 2 === 0 && this.mayClose(run)) return run;
    return this.closing(quote, run) + 1;
  }

  /** The first quote from a place on that is left over of a run and has a blank behind it, or −1. */
  private closing(quote: string, from: number): number {
    const known = this.found.get(quote);
    if (known !== undefined && from >= known.from && (known.at < 0 || known.at >= from)) return known.at;
    let at = this.text.indexOf(quote, from);
    while (at >= 0) {
      let run = at;
      while (this.text[run] === quote) run++;
      if ((run - at) % 2 === 1 && this.mayClose(run)) {
        at = run - 1;
        break;
      }
      at = this.text.indexOf(quote, run);
    }
    this.found.set(quote, { from, at });
    return at;
  }

  private mayClose(end: number): boolean {
    return end === this.text.length || BLANK.test(defined(this.text[end]));
  }
}

function unquoted(text: string): string {
  const quote = defined(text[0]);
  return text
    .slice(1, -1)
    .replaceAll(quote + quote, quote)
    .trim();
}
