import * as fc from 'fast-check';
import { type Change, LONGEST } from './changes.ts';
import { changedDocument } from './documents.ts';

const NUMBERS = [
  '1e308',
  '-1e308',
  '1e300',
  '1e-300',
  '1e999',
  '-0',
  '0',
  '-1',
  '1e9',
  '4294967296',
  '9007199254740993',
  '0.0000001',
  'NaN',
  'Infinity',
  '""',
  'null',
  '[]',
  '{}',
  '1e',
  '.',
  '--1',
  '0x10',
  '١',
  '1,5',
  `${'9'.repeat(400)}`,
  '2',
  '100',
  '1000',
  '36',
];

const PIECES = [
  ' ',
  '\n',
  '\t',
  '\u00a0',
  '\ufeff',
  '\0',
  '"',
  "'",
  '""',
  '(',
  ')',
  '[',
  ']',
  '{',
  '}',
  '<',
  '>',
  '&',
  ',',
  ';',
  ':',
  '#',
  '%',
  '-',
  '.',
  'e',
  '0',
  '1',
  '9',
  'a',
  'z',
  'url(',
  'url( ',
  '/*',
  '*/',
  '<!--',
  '<![CDATA[',
  '</g>',
  '<g>',
  ' A1 1 0 0 1 ',
  ' C 1e308 0 0 1e308 9 9',
  'M0 0',
  'rotate(',
  'rgba(1,',
  'BEGIN_DATA\n',
  'END_DATA\n',
  'BEGIN_DATA END_DATA ',
  'NUMBER_OF_FIELDS ',
  ' "a',
  'SPECTRAL_380 ',
  '[[',
  '{"a":',
  '"id":"x",',
  '\ud800',
  '😀',
  '\\',
  '\\u0000',
];

const TIMES = [1, 1, 1, 1, 2, 10, 100, 1000, 5000];

const change: fc.Arbitrary<Change> = fc.record({
  kind: fc.constantFrom<Change['kind'][]>('number', 'number', 'put', 'put', 'repeat', 'drop', 'move', 'end', 'sign', 'splice'),
  at: fc.nat(999_999),
  to: fc.nat(999_999),
  what: fc.nat(9_999),
  times: fc.constantFrom(...TIMES),
});

/** One to four changes, few more often than many. */
const changes = fc.array(change, { minLength: 1, maxLength: 4 });

/**
 * Changed texts of real ones, the same for the same seed.
 * @param files real files, taken in turn
 */
export function* mutated(files: readonly string[], seed: number, count: number): Generator<string> {
  const plans = fc.sample(changes, { seed, numRuns: count });
  for (const [i, plan] of plans.entries()) {
    let text = files[(seed + i) % files.length]!;
    // Documents mostly stay documents, so that what is behind the first check is tried, too.
    if (i % 3 > 0 && text.startsWith('{')) text = changedDocument(text, plan);
    else for (const one of plan) text = changed(text, one, files).slice(0, LONGEST);
    yield text;
  }
}

function changed(text: string, { kind, at, to, what, times }: Change, files: readonly string[]): string {
  const from = Math.floor((at * text.length) / 1e6);
  const until = Math.min(text.length, from + 1 + Math.floor((to * Math.min(400, text.length)) / 1e6));
  switch (kind) {
    case 'number':
      return otherNumber(text, from, NUMBERS[what % NUMBERS.length]!);
    case 'put':
      return text.slice(0, from) + PIECES[what % PIECES.length]!.repeat(times) + text.slice(from);
    case 'repeat':
      return (
        text.slice(0, until) + text.slice(from, until).repeat(Math.min(times, Math.ceil(200_000 / (until - from)))) + text.slice(until)
      );
    case 'drop':
      return text.slice(0, from) + text.slice(until);
    case 'move':
      return text.slice(0, from) + text.slice(until) + text.slice(from, until);
    case 'end':
      return text.slice(0, from);
    case 'sign':
      return text.slice(0, from) + String.fromCharCode(what % 256) + text.slice(from + 1);
    case 'splice': {
      const other = files[what % files.length]!;
      return text.slice(0, from) + other.slice(Math.floor((to * other.length) / 1e6));
    }
  }
}

/** The first number from a place on becomes another. */
function otherNumber(text: string, from: number, number: string): string {
  const start = text.slice(from).search(/\d/u) + from;
  if (start < from) return text;
  let end = start;
  while (end < text.length && /[\d.]/u.test(text[end]!)) end++;
  return text.slice(0, start) + number + text.slice(end);
}
