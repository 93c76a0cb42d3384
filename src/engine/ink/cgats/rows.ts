import { defined, entryAt } from '../../base/at.ts';
import { say } from '../../words/en/ink/cgats.ts';
import type { CgatsFaults } from './faults.ts';
import type { RawTable } from './tables.ts';
import { splitBlanks, splitTabs, type Line, type Splitter, type Token } from './text.ts';

/** A table cut into fields and rows of as many tokens. */
export interface CutTable {
  fields: Token[];
  rows: Token[][];
}

/**
 * Cuts a table into rows, by blanks if the counts agree, else by tabs, rows on a line each or wrapped
 * over several.
 * @param table as framed
 * @param faults receives rows of a wrong count; they are left out, the others stay
 * @returns null when the fields cannot be told
 */
export function cutTable(table: RawTable, faults: CgatsFaults): CutTable | null {
  const { fieldCount, dataLines } = table;
  const candidates = fieldCandidates(table);
  if (candidates.length === 0) {
    faults.tell('cgats.no-format', table.begin, say.tableHasNoData);
    return null;
  }
  for (const fields of candidates) {
    const rows = wholeRows(table, fields.length);
    if (rows === null) continue;
    if (fieldCount && fieldCount.value !== fields.length) {
      faults.tell('cgats.field-count', fieldCount, say.numberOFFIELDSIs(fieldCount.value, fields.length));
    }
    checkSets(table, rows.length, faults);
    return { fields, rows };
  }
  const fields = entryAt(candidates, 0);
  if (fieldCount && fieldCount.value !== fields.length) {
    faults.tell('cgats.field-count', fieldCount, say.numberOFFIELDSIsBut(fieldCount.value, fields.length));
  }
  const rows = usableRows(dataLines, fields.length, table.cut, faults);
  checkSets(table, rows.length, faults);
  return { fields, rows };
}

function fieldCandidates({ fieldLines, fieldCount }: RawTable): Token[][] {
  const byBlanks = fieldLines.flatMap(splitBlanks);
  const byTabs = fieldLines.flatMap(splitTabs).filter((token) => token.text !== '');
  const both = byBlanks.length === byTabs.length ? [byBlanks] : [byBlanks, byTabs];
  const fits = (fields: Token[]): number => (fields.length === fieldCount?.value ? 0 : 1);
  return both.filter((fields) => fields.length > 0).sort((a, b) => fits(a) - fits(b));
}

/** All rows when one way of cutting fits all of them, else null. */
function wholeRows({ dataLines, setCount }: RawTable, n: number): Token[][] | null {
  const withTabs = dataLines.some(({ text }) => text.includes('\t'));
  const splitters: Splitter[] = withTabs ? [splitBlanks, splitTabs] : [splitBlanks];
  for (const split of splitters) {
    const lines = dataLines.map((line) => trimmed(split(line), n)).filter((tokens) => tokens.length > 0);
    if (lines.every((tokens) => tokens.length === n)) return lines;
  }
  for (const split of splitters) {
    const rows = stream(dataLines, split, n);
    if (rows !== null && (setCount === null || rows.length === setCount.value)) return rows;
  }
  return null;
}

/** A tab at the end or before the first cell is not one more cell. */
function trimmed(tokens: Token[], n: number): Token[] {
  let end = tokens.length;
  while (end > n && entryAt(tokens, end - 1).text === '' && !entryAt(tokens, end - 1).quoted) end--;
  const start = end === n + 1 && entryAt(tokens, 0).text === '' && !entryAt(tokens, 0).quoted ? 1 : 0;
  return tokens.slice(start, end);
}

/** Rows of n tokens whatever the lines, or null when the last is not full. */
function stream(dataLines: readonly Line[], split: Splitter, n: number): Token[][] | null {
  const rows: Token[][] = [];
  let row: Token[] = [];
  for (const line of dataLines) {
    const tokens = split(line);
    // A wrapped line may end in a tab.
    if (tokens.length > 1 && defined(tokens.at(-1)).text === '' && !defined(tokens.at(-1)).quoted) tokens.pop();
    for (const token of tokens) {
      row.push(token);
      if (row.length === n) {
        rows.push(row);
        row = [];
      }
    }
  }
  return row.length === 0 ? rows : null;
}

/** The rows of the right count, each other one told. */
function usableRows(dataLines: readonly Line[], n: number, cut: boolean, faults: CgatsFaults): Token[][] {
  let lines: Token[][] = [];
  let most = -1;
  for (const split of [splitBlanks, splitTabs]) {
    const cutLines = dataLines.map((line) => trimmed(split(line), n)).filter((tokens) => tokens.length > 0);
    const right = cutLines.filter((tokens) => tokens.length === n).length;
    if (right > most) {
      most = right;
      lines = cutLines;
    }
  }
  const groups = most > 0 ? lines.map((tokens) => [tokens]) : wrappedGroups(lines, n);
  const rows: Token[][] = [];
  groups.forEach((group, i) => {
    const row = group.flat();
    if (row.length === n) {
      rows.push(row);
      return;
    }
    const last = cut && i === groups.length - 1;
    const why = last ? say.fileSeemsToBe : say.valueIsMissingOr;
    const code = row.length < n && last ? 'cgats.truncated' : 'cgats.row-count';
    faults.tell(code, entryAt(row, 0), say.thisRowHasValues(row.length, n, why));
  });
  return rows;
}

/** Rows are not looked for over more lines than this, all together. */
const MOST_LOOKS = 2_000_000;

/** Lines of one row together: whole rows are wrapped alike, so what lies between them is a bad one. */
function wrappedGroups(lines: Token[][], n: number): Token[][][] {
  let looks = 0;
  const wraps = lines.map((_, i) => {
    const wrap = looks > MOST_LOOKS ? null : wrapAt(lines, i, n);
    looks += wrap?.looks ?? 0;
    return wrap?.counts ?? null;
  });
  const seen = new Map<string, number>();
  for (const wrap of wraps) if (wrap) seen.set(wrap, (seen.get(wrap) ?? 0) + 1);
  const usual = [...seen].reduce((best, entry) => (entry[1] > best[1] ? entry : best), ['', 0])[0];
  if (usual === '') return lines.map((tokens) => [tokens]);
  const length = usual.split(' ').length;
  const groups: Token[][][] = [];
  let i = 0;
  while (i < lines.length) {
    let end = i + length;
    if (wraps[i] !== usual) for (end = i + 1; end < lines.length && wraps[end] !== usual;) end++;
    groups.push(lines.slice(i, end));
    i = end;
  }
  return groups;
}

/** How many tokens stand on each line of the row that would begin here; none when it ends inside a line. */
function wrapAt(lines: Token[][], start: number, n: number): { counts: string | null; looks: number } {
  const counts: number[] = [];
  let sum = 0;
  for (let i = start; i < lines.length && sum < n; i++) {
    counts.push(entryAt(lines, i).length);
    sum += entryAt(lines, i).length;
  }
  return { counts: sum === n ? counts.join(' ') : null, looks: counts.length };
}

function checkSets({ setCount, cut }: RawTable, found: number, faults: CgatsFaults): void {
  if (setCount === null || setCount.value === found) return;
  const mend = cut || found < setCount.value ? say.someAreMissingSo : say.correctNumber;
  faults.tell('cgats.set-count', setCount, say.numberOFSETSIs(setCount.value, found, mend));
}
