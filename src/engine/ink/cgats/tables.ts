import { say } from '../../words/en/ink/cgats.ts';
import { quote, type CgatsFaults, type Place } from './faults.ts';
import { UNPRINTED_KEYS } from './lights.ts';
import { numberOf, splitBlanks, type Line, type Token } from './text.ts';

/** A count that the file states. */
interface Stated extends Place {
  value: number;
}

/** One table of the file, its fields and rows still uncut. */
export interface RawTable {
  /** Keywords of the header that matter, in capitals, with their values; later ones win. */
  header: ReadonlyMap<string, string>;
  fieldLines: readonly Line[];
  dataLines: readonly Line[];
  /** Where its data begin. */
  begin: Place;
  fieldCount: Stated | null;
  setCount: Stated | null;
  /** Whether END_DATA was missing. */
  cut: boolean;
}

/** Keywords of the header that anything is made of; charts have thousands of others. */
const KEPT: ReadonlySet<string> = new Set([
  'SPECTRAL_BANDS',
  'SPECTRAL_START_NM',
  'SPECTRAL_END_NM',
  'SPECTRAL_NORM',
  'ILLUMINANT',
  'WEIGHTING_FUNCTION',
  ...UNPRINTED_KEYS,
]);

const WORDS = /\b(?:BEGIN_DATA|END_DATA|NUMBER_OF)/iu;
const STRUCTURE = new Set(['BEGIN_DATA_FORMAT', 'END_DATA_FORMAT', 'BEGIN_DATA', 'END_DATA', 'NUMBER_OF_FIELDS', 'NUMBER_OF_SETS']);

/**
 * The tables of a CGATS text. Fields and header hold on for later tables that do not give their own.
 * @param lines of the file
 * @param faults receives what is wrong with the frame of the tables
 */
export function tablesOf(lines: readonly string[], faults: CgatsFaults): RawTable[] {
  const reader = new TableReader(faults);
  lines.forEach((text, i) => reader.read({ text, line: i + 1, column: 1 }));
  return reader.end({ line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 });
}

class TableReader {
  private readonly faults: CgatsFaults;
  private readonly tables: RawTable[] = [];
  private readonly header = new Map<string, string>();
  private inside: 'header' | 'format' | 'data' = 'header';
  private fieldLines: Line[] = [];
  private dataLines: Line[] = [];
  private begin: Place = { line: 1, column: 1 };
  private fieldCount: Stated | null = null;
  private setCount: Stated | null = null;

  constructor(faults: CgatsFaults) {
    this.faults = faults;
  }

  read(line: Line): void {
    if (!WORDS.test(line.text)) {
      this.take(line);
      return;
    }
    const tokens = splitBlanks(line);
    let from = 0;
    tokens.forEach((token, i) => {
      const word = token.text.toUpperCase();
      if (token.quoted || !STRUCTURE.has(word)) return;
      this.take(part(line, from, token.column - 1));
      from = token.column - 1 + token.text.length;
      if (word.startsWith('NUMBER')) {
        const value = tokens[i + 1];
        this.count(word, token, value);
        if (value) from = value.column - 1 + value.text.length + (value.quoted ? 2 : 0);
      } else {
        this.frame(word, token);
      }
    });
    this.take(part(line, from, line.text.length));
  }

  end(place: Place): RawTable[] {
    if (this.inside === 'data') {
      // Without a line end the last number may be cut in two, so that its row is not to be trusted.
      const last = this.dataLines.at(-1);
      if (last?.line === place.line && place.column > 1) {
        this.dataLines[this.dataLines.length - 1] = { ...last, text: withoutLastWord(last.text) };
      }
      this.faults.tell('cgats.truncated', place, say.fileEndsBeforeEND);
      this.close(true);
    } else if (this.inside === 'format') {
      this.faults.tell('cgats.truncated', place, say.fileEndsInsideIts);
    }
    return this.tables;
  }

  private take(line: Line): void {
    if (line.text.trim() === '') return;
    if (this.inside === 'data') this.dataLines.push(line);
    else if (this.inside === 'format') this.fieldLines.push(line);
    else {
      const [key, ...rest] = splitBlanks(line);
      const keyword = key === undefined || key.quoted ? '' : key.text.toUpperCase();
      if (KEPT.has(keyword) && rest.length > 0) this.header.set(keyword, rest.map((token) => token.text).join(' '));
    }
  }

  private count(word: string, place: Token, value: Token | undefined): void {
    if (this.inside === 'data') this.missing('END_DATA', word, place);
    const number = value ? numberOf(value.text) : NaN;
    const stated = Number.isInteger(number) && number >= 0 ? { value: number, line: place.line, column: place.column } : null;
    if (stated === null) {
      const found = value ? say.not(quote(value.text)) : '';
      this.faults.tell('cgats.bad-count', value ?? place, say.mustBeFollowedBy(word, found));
    }
    if (word === 'NUMBER_OF_FIELDS') this.fieldCount = stated;
    else this.setCount = stated;
  }

  private frame(word: string, place: Token): void {
    const opens = word.startsWith('BEGIN');
    if (opens && this.inside === 'data') this.missing('END_DATA', word, place);
    if (word === 'BEGIN_DATA' && this.inside === 'format') {
      this.faults.tell('cgats.no-end', place, say.endDATAFORMATIs);
    }
    if (word === 'BEGIN_DATA_FORMAT') {
      this.fieldLines = [];
      this.inside = 'format';
    } else if (word === 'BEGIN_DATA') {
      this.dataLines = [];
      this.begin = { line: place.line, column: place.column };
      this.inside = 'data';
    } else if (word === 'END_DATA' && this.inside === 'data') {
      this.close(false);
    } else if (word === 'END_DATA_FORMAT' && this.inside === 'format') {
      this.inside = 'header';
    } else {
      this.faults.tell('cgats.stray', place, say.hasNoBEGINBefore(word));
    }
  }

  private missing(word: string, found: string, place: Place): void {
    this.faults.tell('cgats.no-end', place, say.isMissingBeforeTable(word, found));
    this.close(true);
  }

  private close(cut: boolean): void {
    const { fieldLines, dataLines, begin, fieldCount, setCount } = this;
    this.tables.push({ header: new Map(this.header), fieldLines, dataLines, begin, fieldCount, setCount, cut });
    this.dataLines = [];
    this.setCount = null;
    this.inside = 'header';
  }
}

function part({ text, line }: Line, from: number, to: number): Line {
  return { text: text.slice(from, to), line, column: from + 1 };
}

function withoutLastWord(text: string): string {
  let end = text.trimEnd().length;
  while (end > 0 && !/\s/u.test(text.charAt(end - 1))) end--;
  return text.slice(0, end);
}
