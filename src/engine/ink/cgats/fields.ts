import { entryAt } from '../../base/at.ts';
import { cutEnd } from '../../base/words.ts';
import type { Token } from './text.ts';

/** What a file says of the numbers in its spectral columns. */
export type Unit = 'fraction' | 'percent' | null;

/** Which columns of a table hold what, as indexes into a row; −1 for none. */
export interface FieldRoles {
  id: number;
  name: number;
  /** L, a, b. */
  lab: [number, number, number] | null;
  /** X, Y, Z. */
  xyz: [number, number, number] | null;
  /** One column a wavelength, rising. */
  bands: { column: number; nm: number }[];
  /** Columns of a wavelength and its value side by side, as they come. */
  pairs: { nm: number; value: number }[];
  /** What the spectral columns' names have in common; tables of one kind are scaled alike. */
  family: string;
  unit: Unit;
}

const IDS = ['SAMPLEID', 'SAMPLENUMBER', 'SAMPLENO', 'SAMPLE', 'ID', 'PATCHID', 'NUMBER', 'NO'];
const NAMES = ['SAMPLENAME', 'NAME', 'PATCHNAME', 'COLORNAME', 'COLOURNAME', 'DESCRIPTION', 'LABEL', 'SAMPLELOC', 'LOC', 'LOCATION'];
const XYZS = ['XYZ?', 'CIEXYZ?', 'CIE?', 'XYZ?D50', '?'];
const LABS = ['LAB?', 'CIELAB?', 'CIE?', 'LAB?STAR', '?STAR', '?'];

/** Names of other quantities by wavelength: transmittance, density, absorption, emission, raw counts. */
const NOT_REFLECTANCE =
  /^(?:T|TR|TRANS|TRANSMITTANCE|D|DENSITY|OD|ABS|ABSORBANCE|ABSORPTION|A|E|EMISSION|RADIANCE|IRRADIANCE|RAW|STDEV|STDDEV|SD|SIGMA)(?:NM)?$/u;
const REFLECTANCE = /^(?:|SPECTRAL|SPECTRALNM|SPECTRALPCT|SPECTRALDEC|SPECTRALR|NM|SPEC|SPECTRUM|R|RNM|REF|REFL|REFLECTANCE|WL|LAMBDA)$/u;

const MIN_BANDS = 4;
const NM_RANGE = [250, 1200] as const;

/**
 * What each field of a table holds, by its name in any letter case.
 * @param fields names as they stand in the data format
 * @param header keywords in capitals; may give the true wavelengths where names round them
 */
export function fieldRoles(fields: readonly Token[], header: ReadonlyMap<string, string>): FieldRoles {
  const keys = fields.map(({ text }) =>
    text
      .toUpperCase()
      .replaceAll('*', 'STAR')
      .replaceAll(/[^A-Z0-9.,%]/gu, ''),
  );
  const find = (names: readonly string[]): number => names.map((name) => keys.indexOf(name)).find((at) => at >= 0) ?? -1;
  const three = (forms: readonly string[], axes: string): [number, number, number] | null => {
    const places = forms.map((form) => [...axes].map((axis) => keys.indexOf(form.replace('?', axis))));
    return (places.find((at) => at.every((i) => i >= 0)) as [number, number, number] | undefined) ?? null;
  };
  const { family, bands } = bandColumns(fields);
  const pairs = bands.length > 0 ? [] : pairColumns(keys);
  const kind = pairs.length > 0 ? 'SPECTRALNM' : family;
  return {
    id: find(IDS),
    name: find(NAMES),
    lab: three(LABS, 'LAB'),
    xyz: three(XYZS, 'XYZ'),
    bands: trueWavelengths(bands, header),
    pairs,
    family: kind,
    unit: unitOf(
      kind,
      pairs.map(({ value }) => entryAt(keys, value)),
      header,
    ),
  };
}

function bandColumns(fields: readonly Token[]): { family: string; bands: FieldRoles['bands'] } {
  const families = new Map<string, Map<number, number>>();
  fields.forEach(({ text }, column) => {
    const found = bandName(text.toUpperCase());
    if (found === null) return;
    const columns = families.get(found.family) ?? new Map<number, number>();
    families.set(found.family, columns);
    if (!columns.has(found.nm)) columns.set(found.nm, column);
  });
  const usable = [...families].filter(([family, columns]) => columns.size >= MIN_BANDS && !NOT_REFLECTANCE.test(family));
  const best = usable.find(([family]) => REFLECTANCE.test(family.replaceAll('%', ''))) ?? usable[0];
  if (!best) return { family: '', bands: [] };
  const bands = [...best[1]].map(([nm, column]) => ({ column, nm }));
  return { family: best[0], bands: bands.sort((a, b) => a.nm - b.nm) };
}

/** A wavelength stands within so many signs of a name's end; patterns are tried on no more. */
const TAIL = 24;

/** What stands before the wavelength in 'SPECTRAL_NM380', 'R 400.5 nm', 'NM_0380', and the wavelength. */
function bandName(name: string): { family: string; nm: number } | null {
  const head = name.slice(0, -TAIL);
  const tail = name.slice(-TAIL);
  const bare = cutEnd(tail.endsWith('NM') ? tail.slice(0, -2) : tail, /[\s_]/u);
  const match = /0?(\d{3,4}(?:[.,]\d+)?)$/u.exec(bare);
  if (!match) return null;
  const nm = Number(entryAt(match, 1).replace(',', '.'));
  if (!(nm >= NM_RANGE[0] && nm <= NM_RANGE[1])) return null;
  return { family: (head + bare.slice(0, match.index)).replaceAll(/[^A-Z0-9%]/gu, ''), nm };
}

function pairColumns(keys: readonly string[]): FieldRoles['pairs'] {
  const pairs: FieldRoles['pairs'] = [];
  let nm = -1;
  keys.forEach((key, column) => {
    if (/^(?:SPECTRALNM|SPECTRALWAVELENGTH|WAVELENGTH|NM|LAMBDA)\d{0,2}$/u.test(key)) nm = column;
    else if (nm >= 0 && /^(?:SPECTRAL(?:PCT|DEC|R|REFLECTANCE)?|REFLECTANCE|REFL|R|%R)\d{0,2}$/u.test(key)) {
      pairs.push({ nm, value: column });
      nm = -1;
    }
  });
  return pairs;
}

/** Wavelengths from first, last and number where the header has them and the names only round them. */
function trueWavelengths(bands: FieldRoles['bands'], header: ReadonlyMap<string, string>): FieldRoles['bands'] {
  const [count, first, last] = ['SPECTRAL_BANDS', 'SPECTRAL_START_NM', 'SPECTRAL_END_NM'].map((key) =>
    Number((header.get(key) ?? '').replace(',', '.')),
  ) as [number, number, number];
  if (count !== bands.length || !(last > first)) return bands;
  const exact = bands.map(({ column }, i) => ({ column, nm: first + (i * (last - first)) / (count - 1) }));
  return exact.every(({ nm }, i) => Math.abs(nm - entryAt(bands, i).nm) <= 1) ? exact : bands;
}

function unitOf(family: string, values: readonly string[], header: ReadonlyMap<string, string>): Unit {
  const norm = Number((header.get('SPECTRAL_NORM') ?? '').replace(',', '.'));
  if (norm === 100) return 'percent';
  if (norm === 1) return 'fraction';
  const names = values.length > 0 ? values : [family];
  if (names.every((name) => /PCT|%/u.test(name)) || family === 'SPEC') return 'percent';
  if (names.every((name) => name.includes('DEC'))) return 'fraction';
  return null;
}
