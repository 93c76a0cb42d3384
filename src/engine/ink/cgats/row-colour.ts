import { entryAt, num } from '../../base/at.ts';
import { type Lab, labFromXyzD50, WHITE_D50, xyzD65, type Xyz } from '../../colour/lab.ts';
import { BANDS } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/cgats.ts';
import { quote, type CgatsFaults } from './faults.ts';
import type { FieldRoles } from './fields.ts';
import { numberOf, type Token } from './text.ts';

/** The light that a header names for its Lab and XYZ; D50 where it names none. */
export function illuminantOf(header: ReadonlyMap<string, string>): string {
  const said = [header.get('ILLUMINANT'), header.get('WEIGHTING_FUNCTION')].join(' ');
  return /\b(?:A|C|D\d\d|F\d{1,2})\b/u.exec(said)?.[0] ?? 'D50';
}

/** How a table's tristimulus values become Lab. */
export interface XyzScale {
  /** What they are multiplied with, so that white has Y = 100. */
  factor: 1 | 100;
  /** The perfect white under the table's light. */
  white: Readonly<Xyz>;
}

const WHITES: Record<string, Readonly<Xyz>> = { D50: WHITE_D50, D65: xyzD65(new Float64Array(BANDS).fill(1)) };

// A table in which no patch reaches 1.2 of 100 does not happen, whereas a white of 1 does.
const MOST_OF_ONE = 1.2;
/** Brighteners glow, and instruments err. */
const MOST_Y = 120;
const MOST_XYZ = 200;

/**
 * @param rows of the table
 * @returns null when the tristimulus values are for a light whose white is not known here
 */
export function xyzScaleOf(rows: readonly (readonly Token[])[], { xyz }: FieldRoles, illuminant: string): XyzScale | null {
  const white = WHITES[illuminant];
  if (xyz === null || white === undefined) return null;
  let most = 0;
  for (const row of rows) for (const at of xyz) most = Math.max(most, numberOf(entryAt(row, at).text) || 0);
  return { factor: most <= MOST_OF_ONE ? 100 : 1, white };
}

/** L, a and b of a row, told when they are none. */
export function rowLab(tokens: readonly Token[], faults: CgatsFaults): Lab | null {
  const lab = tokens.map(({ text }) => numberOf(text)) as Lab;
  const bad = lab.findIndex((value, i) => !(i === 0 ? value >= 0 && value <= 105 : Math.abs(value) <= 200));
  if (bad < 0) return lab;
  const token = entryAt(tokens, bad);
  const range = bad === 0 ? say.lMustBeNumber : say.mustBeNumberFrom('Lab'[bad] ?? '');
  faults.tell('cgats.bad-lab', token, say.notRowsLabIs(range, quote(token.text)));
  return null;
}

/** Lab of a row's tristimulus values, told when they are none. Source: CIE 15:2004, 8.2.1. */
export function rowXyz(tokens: readonly Token[], { factor, white }: XyzScale, faults: CgatsFaults): Lab | null {
  const xyz = tokens.map(({ text }) => numberOf(text) * factor) as Xyz;
  const bad = xyz.findIndex((value, i) => !(value >= 0 && value <= (i === 1 ? MOST_Y : MOST_XYZ)));
  if (bad < 0) {
    const [x, y, z] = xyz.map((value, i) => (value / num(white, i)) * num(WHITE_D50, i)) as Xyz;
    return labFromXyzD50(x, y, z);
  }
  const token = entryAt(tokens, bad);
  const most = (bad === 1 ? MOST_Y : MOST_XYZ) / factor;
  faults.tell('cgats.bad-xyz', token, say.mustBeNumberFrom0('XYZ'[bad] ?? '', most, quote(token.text)));
  return null;
}
