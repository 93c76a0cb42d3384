// Provenance: derived by the method of ASTM E2022 (Lagrange cubic interior, quadratic ends) from the
// 1 nm CIE 1931 2° colour-matching functions, 360–830 nm, for data NOT corrected for bandpass, with
// the tails 360–370 nm folded into 380 and 740–830 nm into 730 as ISO 13655 and ASTM E308 prescribe.
// D50 is spline-interpolated from its 5 nm table, D65 linearly. Worked out once, before the first
// version; their whites and Lab of measured spectra are checked in tests/published/colour. Plain 10 nm
// sums would miss the white by 0.04.

/** Bands of every reflectance, absorption and scattering curve. */
export const BANDS = 36;

/** Middle of each band, nm: 380 to 730 in steps of 10. */
export const WAVELENGTHS_NM: readonly number[] = Array.from({ length: BANDS }, (_, band) => 380 + 10 * band);

/** X = Σ x[band] · reflectance[band], the same for Y and Z; a perfect white has Y = 100. */
export interface ObserverWeights {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly z: readonly number[];
}

/** Of each band: its middle in nm, then x, y, z under D50 and x, y, z under D65. */
const TABLE: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [380, 0.00387, 0.00011, 0.01818, 0.00789, 0.00023, 0.03708],
  [390, 0.01202, 0.00034, 0.05675, 0.0221, 0.00063, 0.10435],
  [400, 0.06017, 0.00166, 0.28495, 0.10065, 0.00278, 0.4767],
  [410, 0.23369, 0.00624, 1.1125, 0.3756, 0.01005, 1.78826],
  [420, 0.7756, 0.02285, 3.7261, 1.19991, 0.0355, 5.76543],
  [430, 1.60867, 0.06595, 7.85302, 2.39609, 0.09837, 11.69754],
  [440, 2.45393, 0.16246, 12.31431, 3.41776, 0.22609, 17.15017],
  [450, 2.77748, 0.31337, 14.6482, 3.69868, 0.41732, 19.50569],
  [460, 2.49977, 0.51427, 14.34614, 3.22732, 0.66415, 18.5203],
  [470, 1.71679, 0.79801, 11.29651, 2.14883, 0.99798, 14.13655],
  [480, 0.86118, 1.23992, 7.31097, 1.04243, 1.50129, 8.84982],
  [490, 0.2828, 1.83847, 4.12639, 0.33273, 2.1637, 4.85592],
  [500, 0.03993, 2.94886, 2.46671, 0.04546, 3.3521, 2.80235],
  [510, 0.08828, 4.63239, 1.4467, 0.09802, 5.12903, 1.6019],
  [520, 0.59322, 6.5854, 0.73632, 0.6367, 7.07631, 0.7913],
  [530, 1.59062, 8.31073, 0.40101, 1.66653, 8.70758, 0.4197],
  [540, 2.79873, 9.19459, 0.1964, 2.88362, 9.47361, 0.2023],
  [550, 4.20703, 9.65146, 0.08474, 4.25044, 9.75184, 0.08559],
  [560, 5.65681, 9.47127, 0.03679, 5.6259, 9.41907, 0.03655],
  [570, 7.13046, 8.89948, 0.01966, 6.98772, 8.72168, 0.01925],
  [580, 8.54288, 8.11456, 0.01493, 8.21357, 7.8017, 0.01435],
  [590, 9.25154, 6.82587, 0.01041, 8.72978, 6.44186, 0.00982],
  [600, 9.83735, 5.83895, 0.00735, 9.01473, 5.35111, 0.00673],
  [610, 9.46781, 4.75293, 0.00355, 8.49153, 4.26254, 0.00318],
  [620, 8.01059, 3.57379, 0.00159, 7.05037, 3.14516, 0.0014],
  [630, 5.92465, 2.44267, 0.0005, 5.12414, 2.11257, 0.00043],
  [640, 4.17292, 1.62997, 0.00016, 3.51584, 1.37322, 0.00014],
  [650, 2.60849, 0.98401, 2e-5, 2.1673, 0.81752, 2e-5],
  [660, 1.54051, 0.56965, -0.0, 1.25208, 0.46298, -0.0],
  [670, 0.85504, 0.31294, 0.0, 0.67838, 0.24827, 0.0],
  [680, 0.43394, 0.1577, 0.0, 0.34068, 0.1238, 0.0],
  [690, 0.19372, 0.07004, 0.0, 0.1534, 0.05546, 0.0],
  [700, 0.09696, 0.03501, 0.0, 0.07579, 0.02736, 0.0],
  [710, 0.05016, 0.01811, 0.0, 0.03958, 0.01429, 0.0],
  [720, 0.02202, 0.00795, 0.0, 0.01768, 0.00639, 0.0],
  [730, 0.02221, 0.00802, 0.0, 0.01784, 0.00644, 0.0],
];

/** Weights for illuminant D50, CIE 1931 2° observer. */
export const WEIGHTS_D50: ObserverWeights = {
  x: TABLE.map((row) => row[1]),
  y: TABLE.map((row) => row[2]),
  z: TABLE.map((row) => row[3]),
};

/** Weights for illuminant D65, CIE 1931 2° observer. */
export const WEIGHTS_D65: ObserverWeights = {
  x: TABLE.map((row) => row[4]),
  y: TABLE.map((row) => row[5]),
  z: TABLE.map((row) => row[6]),
};
