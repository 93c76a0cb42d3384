import { say as speech } from '../../words/en/ink/cgats.ts';
import type { Token } from './text.ts';

/** Keywords of what was measured, and the words in them that say a light was. */
const MEASURED = ['MEASUREMENT_TYPE', 'MEASUREMENT_MODE', 'DEVICE_CLASS', 'TYPE'] as const;
const LIGHT = /\b(?:emiss(?:ion|ive)|radiance|irradiance|ambient|flash|light source|illuminant|luminance|display|monitor|projector)\b/iu;
/** Keywords in which people write, and what there is said of nothing but lights. */
const WRITTEN = ['DESCRIPTOR', 'FILE_DESCRIPTOR'] as const;
const LIGHT_WRITTEN = /\b(?:spectral power|power distribution|light source|irradiance|radiance)\b/iu;
const OBSERVER = /\bcolou?r[ -]?match(?:ing)?[ -]functions?\b/iu;
const THROUGH = /\b(?:transmission|transmissive|transmittance|transparency)\b/iu;
/** Columns of light by wavelength, or of absolute tristimulus values. */
const LIGHT_FIELD = /^(?:(?:E|EMISSION|RADIANCE|IRRADIANCE|SPD|POWER)(?:_?NM)?[ _]?\d{3}|(?:XYZ_?[XYZ]_?)?(?:CDM2|CD_M2))/iu;

/** Keywords that `unprinted` looks at. */
export const UNPRINTED_KEYS: readonly string[] = [...MEASURED, ...WRITTEN, 'LUMINANCE_XYZ_CDM2', 'DISPLAY_TYPE_REFRESH'];

/**
 * Why a table holds no colours of a surface, where its header or its columns say so.
 * @param header keywords in capitals
 * @returns a sentence with what to do; null when nothing speaks against a print
 */
export function unprinted(fields: readonly Token[], header: ReadonlyMap<string, string>): string | null {
  const say = (keys: readonly string[]): string => keys.map((key) => header.get(key) ?? '').join(' | ');
  const written = say(WRITTEN);
  if (OBSERVER.test(written)) {
    return speech.theseAreColourMatching;
  }
  const absolute = header.has('LUMINANCE_XYZ_CDM2') || header.has('DISPLAY_TYPE_REFRESH');
  if (absolute || LIGHT.test(say(MEASURED)) || LIGHT_WRITTEN.test(written) || fields.some(({ text }) => LIGHT_FIELD.test(text))) {
    return speech.thisIsLightOf;
  }
  if (THROUGH.test(`${written} | ${say(MEASURED)}`)) {
    return speech.thisIsLightThat;
  }
  return null;
}
