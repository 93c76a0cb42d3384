import { defined } from '../../base/at.ts';

/** A piece of text with its place, both from 1. */
export interface Token {
  text: string;
  line: number;
  column: number;
  /** Whether it stood in quotes, so that it is never a word of the format. */
  quoted: boolean;
}

/** A line of the file, or a part of one with what stood before it blanked, so that columns hold. */
export interface Line {
  text: string;
  line: number;
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
export const splitBlanks: Splitter = ({ text, line }) => {
  const tokens: Token[] = [];
  let i = 0;
  while (i < text.length) {
    const char = defined(text[i]);
    if (BLANK.test(char)) {
      i++;
      continue;
    }
    if (char === '#') break;
    const end = quoteEnd(text, i);
    if (end > 0) {
      tokens.push({ text: unquoted(text.slice(i, end)), line, column: i + 1, quoted: true });
      i = end;
    } else {
      let stop = i + 1;
      while (stop < text.length && !BLANK.test(defined(text[stop]))) stop++;
      tokens.push({ text: text.slice(i, stop), line, column: i + 1, quoted: false });
      i = stop;
    }
  }
  return tokens;
};

/** Cells divided by single tabs; blanks inside stay, an empty cell is a token without text. */
export const splitTabs: Splitter = ({ text, line }) => {
  if (/^\s*(?:#|$)/u.test(text)) return [];
  let column = 1;
  return text.split('\t').map((cell) => {
    const lead = cell.length - cell.trimStart().length;
    const trimmed = cell.trim();
    const quoted = trimmed.length > 1 && quoteEnd(trimmed, 0) === trimmed.length;
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

/** Where the quoted token that begins at i ends, or 0 when none does: inch marks stay text. */
function quoteEnd(text: string, i: number): number {
  const quote = defined(text[i]);
  if (quote !== '"' && quote !== "'") return 0;
  for (let at = text.indexOf(quote, i + 1); at > 0; at = text.indexOf(quote, at + 1)) {
    if (text[at + 1] === quote) at++;
    else if (at + 1 === text.length || BLANK.test(defined(text[at + 1]))) return at + 1;
  }
  return 0;
}

function unquoted(text: string): string {
  const quote = defined(text[0]);
  return text
    .slice(1, -1)
    .replaceAll(quote + quote, quote)
    .trim();
}
