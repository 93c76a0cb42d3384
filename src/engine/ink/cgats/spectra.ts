import { defined, entryAt, f64, num } from '../../base/at.ts';
import { bandsFromSpectrum } from '../../colour/resample.ts';
import { say } from '../../words/en/ink/cgats.ts';
import { quote, type CgatsFaults } from './faults.ts';
import type { FieldRoles } from './fields.ts';
import { MOST_REFLECTANCE, type Scale } from './scale.ts';
import { numberOf, type Token } from './text.ts';

const FIRST_NM = 380;
const LAST_NM = 730;
const COARSEST_NM = 20;
const LEAST_SPAN_NM = 200;
// Noise about zero in the deepest blacks.
const NOISE = 0.01;

/** A row (or the rows of one patch, where each holds one wavelength) and its spectrum as written. */
export interface RowSpectrum {
  row: readonly Token[];
  /** Wavelengths where each row gives its own, else null. */
  nm: Token[] | null;
  values: Token[];
}

/** What one table's remarks need. */
export interface TableContext {
  fields: readonly Token[];
  roles: FieldRoles;
  /** Remarks already made of this table. */
  reported: Set<string>;
}

/** The spectra of a table's rows; rows of a single wavelength are joined while their id stays. */
export function spectraOf(rows: readonly Token[][], roles: FieldRoles): RowSpectrum[] {
  if (roles.pairs.length === 0) {
    return rows.map((row) => ({ row, nm: null, values: roles.bands.map(({ column }) => entryAt(row, column)) }));
  }
  const own = rows.map((row) => ({
    row,
    nm: roles.pairs.map(({ nm }) => entryAt(row, nm)),
    values: roles.pairs.map(({ value }) => entryAt(row, value)),
  }));
  const key = roles.id >= 0 ? roles.id : roles.name;
  if (roles.pairs.length > 1 || key < 0) return own;
  const joined: (typeof own)[number][] = [];
  for (const one of own) {
    const last = joined.at(-1);
    if (last && entryAt(last.row, key).text === entryAt(one.row, key).text) {
      last.nm.push(...one.nm);
      last.values.push(...one.values);
    } else {
      joined.push(one);
    }
  }
  return joined;
}

/**
 * A spectrum on the 36 bands, 0–1.
 * @param faults receives the first bad value of the row, and once a table what was assumed
 * @returns null when a value is bad or the row has no spectrum
 */
export function toBands(spectrum: RowSpectrum, scale: Scale, table: TableContext, faults: CgatsFaults): Float64Array | null {
  const { roles, fields, reported } = table;
  if (spectrum.values.length === 0) return null;
  const values = readValues(spectrum.values, scale, faults);
  if (values === null) return null;
  let nm = roles.bands.map((band) => band.nm);
  if (spectrum.nm !== null) {
    const own = ownWavelengths(spectrum.nm, values, faults);
    if (own === null) return null;
    nm = own;
  }
  const place = entryAt(fields, roles.bands[0]?.column ?? entryAt(roles.pairs, 0).nm);
  const once = (code: string, sentence: string): void => {
    if (reported.has(code)) return;
    reported.add(code);
    faults.tell(code, place, sentence);
  };
  const first = num(nm, 0);
  const last = defined(nm.at(-1));
  if (nm.length < 4 || Math.min(last, LAST_NM) - Math.max(first, FIRST_NM) < LEAST_SPAN_NM) {
    once('cgats.too-narrow', say.spectrumHasValuesFrom(nm.length, show(first), show(last)));
    return null;
  }
  if (first > FIRST_NM || last < LAST_NM) {
    once('cgats.extended', say.spectraRunFromTo(show(first), show(last), FIRST_NM, LAST_NM));
  }
  const widest = nm.reduce((most, value, i) => (i === 0 ? 0 : Math.max(most, value - num(nm, i - 1))), 0);
  if (widest > COARSEST_NM + 1) {
    once('cgats.coarse', say.wavelengthsAreUpTo(show(widest), COARSEST_NM));
  }
  return bandsFromSpectrum(nm, values);
}

function readValues(tokens: readonly Token[], { divisor }: Scale, faults: CgatsFaults): Float64Array | null {
  const values = new Float64Array(tokens.length);
  let bad: { code: string; token: Token; what: string } | null = null;
  let worse = 0;
  let noisy: Token | null = null;
  tokens.forEach((token, i) => {
    const value = numberOf(token.text) / divisor;
    values[i] = Math.max(0, value);
    const fault = Number.isNaN(value)
      ? token.text === ''
        ? ['cgats.not-a-number', say.isEmpty]
        : ['cgats.not-a-number', say.isNotNumber]
      : value > MOST_REFLECTANCE
        ? ['cgats.too-bright', say.isMoreThanReflectance(MOST_REFLECTANCE * 100)]
        : value < -NOISE
          ? ['cgats.negative', say.isReflectanceBelow0]
          : null;
    if (fault === null) {
      if (value < 0) noisy ??= token;
    } else if (bad === null) {
      bad = { code: entryAt(fault, 0), token, what: entryAt(fault, 1) };
    } else {
      worse++;
    }
  });
  // A helper variable, because assignments inside the callback are not seen by the type checker.
  const found = bad as { code: string; token: Token; what: string } | null;
  if (found !== null) {
    const others = worse === 0 ? '' : say.andMoreOfRow(worse);
    faults.tell(found.code, found.token, say.measurePatchAgainIts(quote(found.token.text), found.what, others));
    return null;
  }
  const below = noisy as Token | null;
  if (below !== null) {
    faults.tell('cgats.negative', below, say.isReflectanceLittleBelow(quote(below.text)));
  }
  return values;
}

/** The row's own wavelengths, rising; values are sorted with them. */
function ownWavelengths(tokens: readonly Token[], values: Float64Array, faults: CgatsFaults): number[] | null {
  const nm = tokens.map(({ text }) => numberOf(text));
  const seen = new Set<number>();
  const bad = nm.findIndex((value) => {
    const twice = seen.has(value);
    seen.add(value);
    return twice || !(value >= 250 && value <= 1200);
  });
  if (bad >= 0) {
    faults.tell('cgats.bad-wavelength', entryAt(tokens, bad), say.isNoWavelengthFrom(quote(entryAt(tokens, bad).text)));
    return null;
  }
  const order = nm.map((_, i) => i).sort((a, b) => num(nm, a) - num(nm, b));
  values.set(order.map((i) => f64(values, i)));
  return order.map((i) => num(nm, i));
}

function show(nm: number): string {
  return String(Math.round(nm * 10) / 10);
}
