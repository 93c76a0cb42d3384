import type { Pull } from '../stack/types.ts';

/** Shape, centre from the sheet's top left (mm), clockwise turn (°), scale. */
export type DemoPlace = readonly [shape: string, xMm: number, yMm: number, turnDeg: number, scale: number];

export type DemoPull = readonly [screen: string, ink: string, lay?: Partial<Pick<Pull, 'dxMm' | 'dyMm' | 'turnDeg' | 'strokes'>>];

/** Screens by id and name, in the order of their numbers. */
export const DEMO_SCREENS: readonly (readonly [id: string, name: string, ...places: DemoPlace[]])[] = [
  ['slip', 'Slip at low water', ['slipway', 280, 560, 0, 1.04]],
  ['sky', 'Slip turned over', ['slipway', 274, 196, 180, 1.02]],
  ['keel', 'Great rib', ['hull-rib', 290, 350, -7, 1.08]],
  ['arch', 'Rib turned over', ['hull-rib', 322, 338, 170, 0.84]],
  ['posts', 'Tide posts', ['tide-post', 84, 420, -2, 1.04], ['tide-post', 498, 560, 3, 0.6]],
  ['coil', 'Rope coil', ['rope-coil', 262, 566, -6, 0.96]],
  ['wing', 'Gull wing', ['gull-wing', 262, 177, -13, 1.1]],
  ['marker', 'Channel marker', ['channel-marker', 392, 484, 7, 0.98]],
  ['floats', 'Three floats', ['net-float', 468, 198, 12, 0.7], ['net-float', 392, 112, -20, 0.44], ['net-float', 486, 96, 30, 0.3]],
  ['ring', 'Mooring ring', ['mooring-ring', 226, 330, -16, 1.12]],
  ['fenders', 'Fenders', ['fender', 412, 318, 14, 0.9], ['fender', 478, 352, 6, 0.66]],
  ['bollard', 'Bollard', ['bollard', 440, 588, -4, 1.02]],
  ['cleats', 'Cleats', ['cleat', 150, 108, -8, 0.8], ['cleat', 240, 686, 4, 0.56]],
  ['leads', 'Sounding leads', ['sounding-lead', 218, 404, 6, 1.02], ['sounding-lead', 148, 636, -10, 0.6]],
  ['ribs', 'Ribs in a row', ['hull-rib', 170, 608, 4, 0.46], ['hull-rib', 318, 626, -5, 0.46], ['hull-rib', 432, 596, 8, 0.4]],
  ['wings', 'Far wings', ['gull-wing', 398, 110, -24, 0.46], ['gull-wing', 170, 270, 14, 0.58]],
];

/** First down first. */
export const DEMO_BENCH: readonly DemoPull[] = [
  ['sky', 'shoal'],
  ['slip', 'clay'],
  ['arch', 'shoal'],
  ['keel', 'rust'],
  ['coil', 'weed'],
  ['ring', 'dusk'],
  ['posts', 'tar'],
  ['marker', 'signal'],
  ['wing', 'foam'],
  ['floats', 'signal'],
  ['fenders', 'dusk'],
  ['leads', 'foam'],
];

/**
 * Screens of the bench for the lesson: three lie over one another and the fenders over the great
 * rib alone, so that some of the 24 orders print the same picture.
 */
export const DEMO_LESSON: readonly string[] = ['keel', 'coil', 'fenders', 'leads'];
