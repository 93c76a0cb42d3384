import type { Pull } from '../stack/types.ts';

/** Shape, centre from the sheet's top left (mm), clockwise turn (°), scale. */
export type DemoPlace = readonly [shape: string, xMm: number, yMm: number, turnDeg: number, scale: number];

export type DemoPull = readonly [screen: string, ink: string, lay?: Partial<Pick<Pull, 'dxMm' | 'dyMm' | 'turnDeg' | 'strokes'>>];

/** Screens by id and name, in the order of their numbers. */
export const DEMO_SCREENS: readonly (readonly [id: string, name: string, ...places: DemoPlace[]])[] = [
  ['slip', 'Slip at low water', ['slipway', 290, 560, 0, 1.04]],
  ['sky', 'Slip turned over', ['slipway', 272, 196, 180, 1.02]],
  ['keel', 'Great rib', ['hull-rib', 286, 372, -6, 1.06]],
  ['arch', 'Rib turned over', ['hull-rib', 306, 276, 172, 0.86]],
  ['posts', 'Tide posts', ['tide-post', 92, 392, -2, 1.22], ['tide-post', 474, 470, 3, 0.92]],
  ['coil', 'Rope coil', ['rope-coil', 330, 566, -8, 0.92]],
  ['wing', 'Gull wing', ['gull-wing', 286, 150, -12, 1.08]],
  ['marker', 'Channel marker', ['channel-marker', 396, 372, 6, 0.92]],
  ['floats', 'Three floats', ['net-float', 150, 512, 12, 0.94], ['net-float', 222, 636, -20, 0.62], ['net-float', 96, 656, 30, 0.5]],
  ['ring', 'Mooring ring', ['mooring-ring', 196, 330, -14, 0.96]],
  ['fenders', 'Fenders', ['fender', 408, 208, 16, 0.84], ['fender', 470, 250, 8, 0.66]],
  ['bollard', 'Bollard', ['bollard', 444, 588, -4, 1.02]],
  ['cleats', 'Cleats', ['cleat', 150, 108, -8, 0.8], ['cleat', 240, 690, 4, 0.56]],
  ['leads', 'Sounding leads', ['sounding-lead', 170, 250, 10, 0.7], ['sounding-lead', 250, 300, -6, 0.9], ['sounding-lead', 330, 420, 4, 0.6]],
  ['ribs', 'Ribs in a row', ['hull-rib', 180, 600, 4, 0.46], ['hull-rib', 320, 620, -5, 0.46], ['hull-rib', 440, 590, 8, 0.4]],
  ['wings', 'Far wings', ['gull-wing', 400, 110, -24, 0.46], ['gull-wing', 150, 180, 14, 0.58]],
];

/** First down first. */
export const DEMO_BENCH: readonly DemoPull[] = [
  ['sky', 'foam'],
  ['slip', 'clay'],
  ['arch', 'shoal'],
  ['keel', 'rust'],
  ['ring', 'dusk'],
  ['coil', 'weed'],
  ['wing', 'shoal'],
  ['marker', 'signal'],
  ['floats', 'dusk'],
  ['posts', 'tar'],
  ['fenders', 'rust'],
  ['wings', 'foam'],
];

/** Screens of the bench that all lie over one another, for the lesson. */
export const DEMO_LESSON: readonly string[] = ['arch', 'keel', 'ring', 'wing'];
