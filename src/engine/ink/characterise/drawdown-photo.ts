import { entryAt, f64, num } from '../../base/at.ts';
import type { Problem } from '../../base/error.ts';
import { linearFromSrgb } from '../../colour/encode.ts';
import { labD50, labFromXyzD50, type Lab } from '../../colour/lab.ts';
import { linearSrgbFromReflectance, xyzD50FromLinearSrgb } from '../../colour/srgb.ts';
import { say } from '../../words/en/ink/characterise.ts';
import { CARD_BLACK, CARD_WHITE } from './card.ts';

/** Mean of a patch of a photo: red, green, blue, sRGB-encoded, 0–255. */
export type PatchRgb = readonly [number, number, number];

/** Patches picked from one photo of a drawdown on a contrast card. */
export interface DrawdownPhoto {
  /** The bare white and the bare black of the card. */
  white: PatchRgb;
  black: PatchRgb;
  /** The ink over each. */
  overWhite: PatchRgb;
  overBlack: PatchRgb;
}

/** Colours of a drawdown, or none when the photo cannot give them. */
export interface PhotoColours {
  /** D50/2°. */
  colours: { overWhite: Lab; overBlack: Lab } | null;
  problems: Problem[];
}

const CALLED: Record<keyof DrawdownPhoto, string> = {
  white: say.whitePatch,
  black: say.blackPatch,
  overWhite: say.inkOverWhite,
  overBlack: say.inkOverBlack,
};
const CHANNELS = [say.red, say.green, say.blue];
const CLIPPED = 254;
const CRUSHED = 1;
const LEAST_SPAN = 0.05;
// L; sheen and uneven light, while more is a wrong patch.
const MOST_LIGHTER = 1;

/**
 * The two colours of an ink from a photo: per channel, in linear light, the scale on which the photo's
 * black and white patches are the card's.
 * @param cardWhite reflectance of the card's white, 36 bands
 * @param cardBlack reflectance of its black
 * @returns colours to take as a drawdown, with problems: 'drawdown.bad-patch' and
 *   'drawdown.no-contrast' (black as light as white) leave none; 'drawdown.clipped',
 *   'drawdown.above-white' and 'drawdown.over-black-brighter' say why not to trust them
 * Takes the camera's channels for those of the screen: the scale mends exposure, light colour and haze,
 * not a camera's own idea of hues. Source: the empirical line of remote sensing, two known targets.
 */
export function drawdownFromPhoto(
  photo: DrawdownPhoto,
  cardWhite: ArrayLike<number> = CARD_WHITE,
  cardBlack: ArrayLike<number> = CARD_BLACK,
): PhotoColours {
  const problems: Problem[] = [];
  const patches = Object.keys(CALLED) as (keyof DrawdownPhoto)[];
  for (const where of patches) {
    const patch = photo[where];
    if (!(patch.length === 3 && patch.every((value) => value >= 0 && value <= 255))) {
      problems.push({
        code: 'drawdown.bad-patch',
        message: say.needsRedGreenAnd(CALLED[where]),
        where,
      });
    }
  }
  if (problems.length > 0) return { colours: null, problems };
  const light = (where: keyof DrawdownPhoto): number[] => photo[where].map((value) => linearFromSrgb(value / 255));
  const [white, black] = [light('white'), light('black')];
  const flat = white.findIndex((value, i) => !(value - num(black, i) >= LEAST_SPAN));
  if (flat >= 0) {
    const message = say.blackPatchIsAs(entryAt(CHANNELS, flat));
    return { colours: null, problems: [{ code: 'drawdown.no-contrast', message, where: 'black' }] };
  }
  for (const where of patches) problems.push(...clippedProblems(photo, where));
  const scale = photoScale(white, black, cardWhite, cardBlack);
  const colourOf = (where: 'overWhite' | 'overBlack'): Lab => scale(light(where));
  const colours = { overWhite: colourOf('overWhite'), overBlack: colourOf('overBlack') };
  for (const where of ['overWhite', 'overBlack'] as const) {
    if (colours[where][0] <= labD50(cardWhite)[0] + MOST_LIGHTER) continue;
    problems.push({
      code: 'drawdown.above-white',
      message: say.isLighterThanCards(CALLED[where]),
      where,
    });
  }
  if (colours.overBlack[0] > colours.overWhite[0] + MOST_LIGHTER) {
    problems.push({
      code: 'drawdown.over-black-brighter',
      message: say.inkIsLighterOver,
      where: 'overBlack',
    });
  }
  return { colours, problems };
}

/** From a photo's linear light to colours, by the two patches of it that are known. */
function photoScale(
  white: readonly number[],
  black: readonly number[],
  knownWhite: ArrayLike<number>,
  knownBlack: ArrayLike<number>,
): (light: readonly number[]) => Lab {
  const top = linearSrgbFromReflectance(knownWhite, new Float64Array(3));
  const bottom = linearSrgbFromReflectance(knownBlack, new Float64Array(3));
  return (light) => {
    const shares = light.map((value, i) => (value - num(black, i)) / (num(white, i) - num(black, i)));
    const scaled = shares.map((share, i) => Math.max(0, f64(bottom, i) + share * (f64(top, i) - f64(bottom, i))));
    return labFromXyzD50(...xyzD50FromLinearSrgb(scaled as [number, number, number]));
  };
}

/** Colours of patches of a photo, or none when it cannot give them. */
export interface PatchColours {
  /** D50/2°, one a patch; null without a scale. */
  labs: Lab[] | null;
  /** 'where' is 'white', 'black' or the index of a patch. */
  problems: Problem[];
}

/**
 * The colours of patches of a print from a photo that shows bare paper and something black as well.
 * @param bare the photo's bare paper and its black patch
 * @param patches to be read, any number
 * @param paper reflectance of the paper, 36 bands
 * @param knownBlack reflectance of the black patch; the invented card's black by default
 * @returns problems 'photo.bad-patch' and 'photo.no-contrast' leave no colours; 'photo.clipped' and
 *   'photo.above-white' say which patches not to trust
 * Source and limits as drawdownFromPhoto.
 */
export function coloursFromPhoto(
  bare: { white: PatchRgb; black: PatchRgb },
  patches: readonly PatchRgb[],
  paper: ArrayLike<number>,
  knownBlack: ArrayLike<number> = CARD_BLACK,
): PatchColours {
  const named: [string, string, PatchRgb][] = [
    ['white', say.barePaper, bare.white],
    ['black', say.blackPatch, bare.black],
    ...patches.map((patch, i): [string, string, PatchRgb] => [`${i}`, say.thisPatch, patch]),
  ];
  const bad = named.filter(([, , patch]) => !(patch.length === 3 && patch.every((value) => value >= 0 && value <= 255)));
  if (bad.length > 0) {
    return {
      labs: null,
      problems: bad.map(([where, called]) => ({
        code: 'photo.bad-patch',
        message: say.needsRedGreenAnd(called),
        where,
      })),
    };
  }
  const light = (patch: PatchRgb): number[] => patch.map((value) => linearFromSrgb(value / 255));
  const [white, black] = [light(bare.white), light(bare.black)];
  const flat = white.findIndex((value, i) => !(value - num(black, i) >= LEAST_SPAN));
  if (flat >= 0) {
    const message = say.blackPatchIsAsLight(entryAt(CHANNELS, flat));
    return { labs: null, problems: [{ code: 'photo.no-contrast', message, where: 'black' }] };
  }
  const problems: Problem[] = [];
  for (const [where, called, patch] of named) {
    const high = patch.findIndex((value) => value >= CLIPPED);
    if (high >= 0)
      problems.push({
        code: 'photo.clipped',
        message: say.isOverexposedInSo(called, entryAt(CHANNELS, high)),
        where,
      });
  }
  const scale = photoScale(white, black, paper, knownBlack);
  const labs = patches.map((patch) => scale(light(patch)));
  const paperL = labD50(paper)[0];
  labs.forEach(([l], i) => {
    if (l > paperL + MOST_LIGHTER && entryAt(patches, i).every((value) => value < CLIPPED)) {
      problems.push({
        code: 'photo.above-white',
        message: say.thisPatchIsLighter,
        where: `${i}`,
      });
    }
  });
  return { labs, problems };
}

function clippedProblems(photo: DrawdownPhoto, where: keyof DrawdownPhoto): Problem[] {
  const high = photo[where].findIndex((value) => value >= CLIPPED);
  if (high >= 0) {
    return [
      {
        code: 'drawdown.clipped',
        message: say.isOverexposedInSo(CALLED[where], entryAt(CHANNELS, high)),
        where,
      },
    ];
  }
  // A saturated ink may well have no light in one channel, a card's black has some in all.
  if (where === 'black' && photo.black.some((value) => value <= CRUSHED)) {
    return [
      {
        code: 'drawdown.clipped',
        message: say.blackPatchIsUnderexposed,
        where,
      },
    ];
  }
  return [];
}
