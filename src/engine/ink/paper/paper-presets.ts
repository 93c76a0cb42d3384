import { WAVELENGTHS_NM } from '../../colour/weights.ts';
import { say } from '../../words/en/ink/paper.ts';

/** A paper colour to start from. */
export interface PaperPreset {
  id: 'white' | 'cream' | 'grey' | 'black';
  name: string;
  /** 36 bands, 0–1. */
  reflectance: readonly number[];
}

/** Reflectance that rises from low to high about a wavelength; rounded, as measured curves are. */
function rising(low: number, high: number, middleNm: number, widthNm: number): number[] {
  return WAVELENGTHS_NM.map((nm) => {
    const share = 1 / (1 + Math.exp((middleNm - nm) / widthNm));
    return Math.round(1e4 * (low + (high - low) * share)) / 1e4;
  });
}

/**
 * Four papers, invented, not measured: an unbrightened white, a cream, a mid grey and a black as dyed
 * papers are, which is far from lightless.
 */
export const PAPER_PRESETS: readonly PaperPreset[] = [
  { id: 'white', name: say.white, reflectance: rising(0.55, 0.9, 395, 18) },
  { id: 'cream', name: say.cream, reflectance: rising(0.38, 0.86, 440, 45) },
  { id: 'grey', name: say.grey, reflectance: rising(0.29, 0.335, 470, 60) },
  { id: 'black', name: say.black, reflectance: rising(0.041, 0.052, 640, 40) },
];
