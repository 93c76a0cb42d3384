import { defined, entryAt } from '../../base/at.ts';
import { cutName } from '../../base/bounds.ts';
import type { Problem } from '../../base/error.ts';
import type { Lab } from '../../colour/lab.ts';
import { say } from '../../words/en/ink/cgats.ts';
import { CgatsFaults, type Place } from './faults.ts';
import { fieldRoles, type FieldRoles } from './fields.ts';
import { unprinted } from './lights.ts';
import { illuminantOf, rowLab, rowXyz, xyzScaleOf, type XyzScale } from './row-colour.ts';
import { cutTable } from './rows.ts';
import { scaleOf, type Scale } from './scale.ts';
import { spectraOf, toBands, type RowSpectrum } from './spectra.ts';
import { tablesOf, type RawTable } from './tables.ts';
import { type Line, linesOf, numberOf, type Token } from './text.ts';

/** The largest file that is read, characters; the largest charts have a tenth of it. */
export const MOST_CGATS_CHARACTERS = 20_000_000;

/** Values in a file; a chart of 6,000 patches has 250,000. */
const MOST_VALUES = 1_000_000;

/** Fields of all tables of a file. */
const MOST_FIELDS = 200_000;

const START: Place = { line: 1, column: 1 };

/** One measured patch. */
export interface CgatsSample {
  /** As the file names it, else its number among the rows of its table. */
  id: string;
  /** As the file names it, else the id. */
  name: string;
  /** 36 bands from 380 to 730 nm, 0–1; up to 1.2 where the paper glows. */
  reflectance?: Float64Array;
  /** As the file gives it, or of its tristimulus values; taken to be D50/2°. */
  lab?: Lab;
}

interface MeasuredTable {
  table: RawTable;
  fields: readonly Token[];
  roles: FieldRoles;
  /** How its tristimulus values are read; null where they are not. */
  xyz: XyzScale | null;
  spectra: RowSpectrum[];
}

/**
 * Patches from the text of a measuring instrument: CGATS.17 / ISO 28178 and its relatives.
 * @param text the whole file, decoded
 * @param fileName for messages
 * @returns samples of all tables in their order, and what is wrong or was assumed, each with line and
 *   column; a row with a fault is left out (or keeps its Lab alone), the others stay. Codes that only
 *   remark: 'cgats.extended' (range shorter than 380–730 nm, the end value repeated),
 *   'cgats.scale-doubtful', 'cgats.coarse', 'cgats.illuminant', 'cgats.field-count'
 * Never throws. Steps of 5 nm are sampled, wider ones interpolated: see bandsFromSpectrum. Source: the
 * ways of writing seen in files; ISO 28178 from memory.
 */
export function readCgats(text: string, fileName: string): { samples: CgatsSample[]; problems: Problem[] } {
  const faults = new CgatsFaults(cutName(fileName));
  const refusal = refusalOf(text);
  if (refusal) {
    faults.tell(...refusal);
    return { samples: [], problems: faults.all() };
  }
  const tables = tablesOf(linesOf(text), faults);
  if (tables.length === 0 && faults.all().length === 0) {
    faults.tell('cgats.no-data', START, say.thereIsNoBEGIN);
  }
  const measured = measuredTables(tables, faults);
  const scales = scalesOf(measured, faults);
  const samples = measured.flatMap((one) => samplesOf(one, defined(scales.get(one.roles.family)), faults));
  return { samples, problems: faults.all() };
}

function refusalOf(text: string): [string, Place, string] | null {
  if (typeof text !== 'string') return ['cgats.binary', START, say.fileIsNotText];
  if (text.length > MOST_CGATS_CHARACTERS) {
    return ['cgats.too-large', START, say.fileHasMillionCharacters(Math.round(text.length / 1e6), MOST_CGATS_CHARACTERS / 1e6)];
  }
  if (wordsOf(text) > MOST_VALUES) {
    return ['cgats.too-large', START, say.fileHasMoreThan(MOST_VALUES / 1e6)];
  }
  // eslint-disable-next-line no-control-regex
  const odd = /[\u0000-\u0008\u000e-\u0019\u001b-\u001f]/u.exec(text);
  if (odd) {
    const before = linesOf(text.slice(0, odd.index));
    const place = { line: before.length, column: defined(before.at(-1)).length + 1 };
    return ['cgats.binary', place, say.thereIsCharacterThat];
  }
  if (text.trim() === '' || text.trim() === '\uFEFF') return ['cgats.empty', START, say.fileIsEmptyExport];
  return null;
}

function measuredTables(tables: readonly RawTable[], faults: CgatsFaults): MeasuredTable[] {
  const measured: MeasuredTable[] = [];
  const counted = new Map<readonly Line[], number>();
  let fields = 0;
  for (const table of tables) {
    // Tables that name no fields of their own have those of the one before.
    const words = counted.get(table.fieldLines) ?? table.fieldLines.reduce((sum, { text }) => sum + wordsOf(text), 0);
    counted.set(table.fieldLines, words);
    fields += words;
    if (fields > MOST_FIELDS) {
      const many = say.tablesUpToThis(MOST_FIELDS);
      faults.tell('cgats.too-large', table.begin, say.itAndAllThat(many));
      break;
    }
    const one = measuredTable(table, faults);
    if (one !== null) measured.push(one);
  }
  return measured;
}

/** How many values a text has at most, an empty cell between two tabs counted. */
function wordsOf(text: string): number {
  let words = 0;
  let blank = true;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (blank ? code > 32 || code === 9 : code === 9) words++;
    blank = code <= 32;
  }
  return words;
}

function measuredTable(table: RawTable, faults: CgatsFaults): MeasuredTable | null {
  if (table.dataLines.length === 0 && table.fieldLines.length > 0) {
    faults.tell('cgats.no-rows', table.begin, say.tableHasNoWhole);
    return null;
  }
  const cut = cutTable(table, faults);
  if (cut === null) return null;
  const { fields, rows } = cut;
  const roles = fieldRoles(fields, table.header);
  const other = unprinted(fields, table.header);
  if (other !== null) {
    faults.tell('cgats.light', table.begin, other);
    return null;
  }
  const curves = roles.bands.length > 0 || roles.pairs.length > 0;
  if (!curves && roles.lab === null && roles.xyz === null) {
    faults.tell('cgats.no-colour', entryAt(fields, 0), say.tableHasNeitherSpectral);
    return null;
  }
  if (rows.length === 0) {
    faults.tell('cgats.no-rows', table.begin, say.tableHasNoWhole);
    return null;
  }
  const illuminant = illuminantOf(table.header);
  // Lab needs no white, so that it is believed before tristimulus values are.
  const xyz = roles.lab === null ? xyzScaleOf(rows, roles, illuminant) : null;
  if (roles.lab === null && roles.xyz !== null && xyz === null && !curves) {
    faults.tell('cgats.light-of-xyz', entryAt(fields, roles.xyz[0]), say.xyzColumnsAreFor(illuminant));
    return null;
  }
  const read = roles.lab ?? (xyz === null ? null : roles.xyz);
  if (read !== null && illuminant !== 'D50') {
    faults.tell('cgats.illuminant', entryAt(fields, read[0]), say.columnsAreForIlluminant(roles.lab === null ? 'XYZ' : 'Lab', illuminant));
  }
  return { table, fields, roles, xyz, spectra: spectraOf(rows, roles) };
}

/** One scale for all tables whose spectral columns are named alike, as a table of dark patches alone misleads. */
function scalesOf(measured: readonly MeasuredTable[], faults: CgatsFaults): Map<string, Scale> {
  const scales = new Map<string, Scale>();
  const families = new Map<string, MeasuredTable[]>();
  for (const one of measured) {
    const same = families.get(one.roles.family);
    if (same === undefined) families.set(one.roles.family, [one]);
    else same.push(one);
  }
  for (const same of families.values()) {
    const { roles, fields } = entryAt(same, 0);
    const values = same.flatMap((one) => one.spectra.flatMap(({ values }) => values.map(({ text }) => numberOf(text))));
    const scale = scaleOf(values, roles.unit);
    scales.set(roles.family, scale);
    const column = roles.bands[0]?.column ?? roles.pairs[0]?.value;
    if (scale.doubt !== null && column !== undefined)
      faults.tell('cgats.scale-doubtful', entryAt(fields, column), say.checkItAgainstPatch(scale.doubt));
  }
  return scales;
}

function samplesOf({ roles, xyz, spectra, fields }: MeasuredTable, scale: Scale, faults: CgatsFaults): CgatsSample[] {
  const reported = new Set<string>();
  return spectra.flatMap((spectrum, i) => {
    const { row } = spectrum;
    const textAt = (at: number): string => (at < 0 ? '' : entryAt(row, at).text);
    const id = textAt(roles.id) || textAt(roles.name) || String(i + 1);
    const sample: CgatsSample = { id, name: textAt(roles.name) || id };
    const tokensAt = (places: readonly number[]): Token[] => places.map((at) => entryAt(row, at));
    const lab =
      roles.lab !== null
        ? rowLab(tokensAt(roles.lab), faults)
        : xyz !== null && roles.xyz !== null
          ? rowXyz(tokensAt(roles.xyz), xyz, faults)
          : null;
    // A patch with its Lab alone may have an empty spectrum.
    const blank = spectrum.values.every(({ text }) => text === '');
    const reflectance = blank && lab !== null ? null : toBands(spectrum, scale, { fields, roles, reported }, faults);
    if (reflectance !== null) sample.reflectance = reflectance;
    if (lab !== null) sample.lab = lab;
    return reflectance === null && lab === null ? [] : [sample];
  });
}
