import { speak } from '../../language.ts';

export const say = speak('engine/ink/film', {
  colourNeedsThreeNumbers: (lab: string) => `A colour needs three numbers, L, a and b; this one is ${lab}.`,
  noInkOnPaper: (show: string, show2: string, show3: string) => `No ink on paper can be L ${show}, a ${show2}, b ${show3}; `,
  nearestOfSameHue: (show: string, showInward: string) => `the nearest of the same hue is L ${show}, a ${showInward}, `,
  inkWithThisColour: (show: string) => `An ink with this colour over white cannot be L ${show}, `,
  bOverBlackIt: (show: string, show2: string) => `a ${show}, b ${show2} over black; it could be `,
  volumeSolids: 'volume solids',
  mustBeShareOf: (what: string, value: number) => `The ${what} must be a share of more than 0 and at most 1; found ${value}.`,
  filmNeedsAsMany: (kx: number, sx: number) => `A film needs as many absorption as scattering values; these are ${kx} and ${sx}.`,
  papersReflectanceMustBe: "The paper's reflectance must be a list of numbers, one a band.",
  papersReflectanceMustBeTo: (least: number, most: number, r: number, band: number) =>
    `The paper's reflectance must be ${least} to ${most}; found ${r} in band ${band}.`,
  no: 'no',
  filmHasBandsOf: (i: number, kx: unknown, sx: unknown, paper: number) =>
    `Film ${i} has ${kx} bands of kx and ${sx} of sx but the paper has ${paper}.`,
  absorptionAndScatteringMust: (k: number, s: number) => `Absorption and scattering must be 0 or more and finite; found ${k} and ${s}.`,
  inkHasBandsAre: (name: string, kx: number, bands: number) => `Ink '${name}' has ${kx} bands; ${bands} are needed.`,
  meshMakersCatalogueRounded: 'a mesh maker’s catalogue, rounded there',
  tradeArticleOf2009: 'a trade article of 2009: measured open area and thickness, lower than the formula',
  countAndThreadOnly: 'count and thread only; opening, open area and volume by formula, fabric 1.55 threads thick',
  meshOfThreadsCm: (threadsPerCm: number, threadUm: number, floor: string | number) =>
    `A mesh of ${threadsPerCm} threads/cm of ${threadUm} µm leaves no opening: threads of less than ${floor} µm are needed.`,
  meshsOpenAreaMust: (stated: number) => `A mesh's open area must lie between 0 and 1; found ${stated}.`,
  meshMustCarryMore: (volume: number) => `A mesh must carry more than 0 and less than 1000 cm³/m²; found ${volume}.`,
  n450OrBy: '45°/0°, or by eye',
  sphereGlossLeftOut: 'sphere, gloss left out',
  sphereGlossIncluded: 'sphere, gloss included',
  noSurfaceAsProjects: 'no surface, as projects from before',
  filmLaidOnAnother:
    'A film laid on another film is thinner. Offset prints show about 0.68 (found on published overprints); screenprint lies between 0.7 and 1, common practice, no source. Pull a target to find your own.',
  shareThatSurfaceReflects: (k1: number, least: number, most: number) =>
    `The share that the surface reflects outside, k1, is ${k1}; give ${least} to ${most}.`,
  shareThatSurfaceThrows: (k2: number, least: number, most: number) =>
    `The share that the surface throws back inside, k2, is ${k2}; give ${least} to ${most}.`,
  filmOnFilmCannot: (bad: number, least: number, most: number) =>
    `A film on a film cannot be ${bad} times as thick as on the paper; give ${least} to ${most} %.`,
  strokesMustBeWhole: (strokes: number) => `Strokes must be a whole number, 1 or more; found ${strokes}.`,
  furtherStrokeMustAdd: (strokeGain: number) => `A further stroke must add 0 or more of the first; found ${strokeGain}.`,
});
