export { BANDS, WAVELENGTHS_NM, WEIGHTS_D50, WEIGHTS_D65, type ObserverWeights } from './weights.ts';
export {
  WHITE_D50,
  WHITE_D65,
  labD50,
  labFromXyzD50,
  xyzD50,
  xyzD50FromLab,
  xyzD65,
  type Lab,
  type Xyz,
} from './lab.ts';
export { deltaE2000, deltaE2000Parts, deltaE2000Values } from './delta-e.ts';
export {
  LINEAR_SRGB_FROM_BANDS,
  LINEAR_SRGB_FROM_XYZ_D50,
  inSrgbGamut,
  linearSrgbFromReflectance,
  linearSrgbFromXyzD50,
  xyzD50FromLinearSrgb,
} from './srgb.ts';
export { encodeSrgb8, linearFromSrgb } from './encode.ts';
export { oklabFromLinearSrgb } from './oklab.ts';
export { labFromSrgbHex, srgbHexFromLab, srgbHexFromLinear } from './screen-colour.ts';
export { bandsFromSpectrum } from './resample.ts';
