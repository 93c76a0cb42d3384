import { f64, num } from '../base/at.ts';

const DEG = Math.PI / 180;
/** Up to a mean hue of 122° R_T is less than 10⁻¹⁵, and rounding hides it. */
export const COS_122 = Math.cos(122 * DEG);
/** The middle of the blues that R_T turns. */
export const [COS_275, SIN_275] = [Math.cos(275 * DEG), Math.sin(275 * DEG)];
/** Terms of each piece of `BLUE_TURN`. */
export const TERMS = 8;
/** Pieces of `BLUE_TURN` for each 1 of 1 − cos(h̄′ − 275°). */
export const PIECES_PER_ONE = 128;
/** 1 − cosine reaches 2, and by rounding a hair more. */
const PIECES = 2 * PIECES_PER_ONE + 1;

/**
 * sin(2Δθ ÷ 2) of CIEDE2000, sin(60° · exp(−((h̄′ − 275°) ÷ 25°)²)), as pieces of polynomials over 1 − cos(h̄′ − 275°):
 * eight terms a piece, lowest first, of a place from −1 to 1 in the piece. An angle, an exponential and a sine would
 * take as long as all the rest of a difference. Interpolated at the zeros of Chebyshev's polynomials; what they miss is
 * below 10⁻¹³, as tests/engine/colour/rotation.test.ts checks at places between.
 */
export const BLUE_TURN = blueTurn();

/**
 * R_T of CIEDE2000 without its factor of chroma, −2·√(C⁷ ÷ (C⁷ + 25⁷)): 0 to sin 60°.
 * @param cos cosine of the mean hue
 * @param sin its sine
 */
export function turnOfBlues(cos: number, sin: number): number {
  if (sin >= 0 && cos > COS_122) return 0;
  const at = (1 - (cos * COS_275 + sin * SIN_275)) * PIECES_PER_ONE;
  const piece = at | 0;
  const x = (at - piece) * 2 - 1;
  const i = piece * TERMS;
  let sum = f64(BLUE_TURN, i + 7) * x + f64(BLUE_TURN, i + 6);
  sum = sum * x + f64(BLUE_TURN, i + 5);
  sum = sum * x + f64(BLUE_TURN, i + 4);
  sum = sum * x + f64(BLUE_TURN, i + 3);
  sum = sum * x + f64(BLUE_TURN, i + 2);
  sum = sum * x + f64(BLUE_TURN, i + 1);
  return sum * x + f64(BLUE_TURN, i);
}

function blueTurn(): Float64Array {
  const out = new Float64Array(PIECES * TERMS);
  for (let piece = 0; piece < PIECES; piece++) {
    out.set(turnPolynomial((piece + 0.5) / PIECES_PER_ONE, 0.5 / PIECES_PER_ONE, TERMS), piece * TERMS);
  }
  return out;
}

/**
 * The turn of the blues as a polynomial of the place from −1 to 1 in a stretch of 1 − cos(h̄′ − 275°), interpolated at the
 * zeros of a Chebyshev polynomial.
 * @param middle of the stretch
 * @param half of its length
 * @param terms how many; the lowest comes first
 */
export function turnPolynomial(middle: number, half: number, terms: number): number[] {
  const out: number[] = Array.from({ length: terms }, () => 0);
  chebyshev(terms).forEach((polynomial, k) => {
    let share = 0;
    for (let j = 0; j < terms; j++) {
      const angle = (Math.PI * (j + 0.5)) / terms;
      share += turnAt(middle + half * Math.cos(angle)) * Math.cos(k * angle);
    }
    share *= (k === 0 ? 1 : 2) / terms;
    polynomial.forEach((factor, term) => (out[term] = num(out, term) + share * factor));
  });
  return out;
}

/** By the formula of the source. @param away 1 − cos(h̄′ − 275°) */
function turnAt(away: number): number {
  const around = Math.acos(Math.max(-1, 1 - away)) / (25 * DEG);
  return Math.sin(60 * DEG * Math.exp(-around * around));
}

/** The factors of the first Chebyshev polynomials, lowest term first. */
function chebyshev(terms: number): number[][] {
  const all = [[1], [0, 1]];
  for (let k = 2; k < terms; k++) {
    const next = [0, ...(all[k - 1] ?? []).map((factor) => 2 * factor)];
    (all[k - 2] ?? []).forEach((factor, term) => (next[term] = (next[term] ?? 0) - factor));
    all.push(next);
  }
  return all;
}
