/** CSS px in a mm where nothing else is known: the px of the CSS standard is 1/96 inch. */
const STANDARD_PX_PER_MM = 96 / 25.4;
/** Width of a bank card, mm. Source: ISO/IEC 7810, ID-1. */
export const CARD_WIDTH_MM = 85.6;
export const CARD_HEIGHT_MM = 53.98;

/** How this screen is looked at. */
export interface ScreenScale {
  /** CSS px in a mm of its glass. */
  pxPerMm: number;
  /** From the eye to the screen, mm. */
  eyeMm: number;
}

const KEY = 'pullstack.screen-scale';
const ARM_LENGTH_MM = 600;
const PX_PER_MM = [1, 20] as const;
const EYE_MM = [100, 5000] as const;

const within = (value: unknown, [least, most]: readonly [number, number]): value is number =>
  typeof value === 'number' && value >= least && value <= most;

/** What was measured in this browser; a screen of the CSS standard at arm's length until it was. */
export function screenScale(): ScreenScale {
  let kept: Partial<ScreenScale> = {};
  try {
    kept = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<ScreenScale>;
  } catch {
    // A browser that keeps nothing has a screen of the standard.
  }
  return {
    pxPerMm: within(kept.pxPerMm, PX_PER_MM) ? kept.pxPerMm : STANDARD_PX_PER_MM,
    eyeMm: within(kept.eyeMm, EYE_MM) ? kept.eyeMm : ARM_LENGTH_MM,
  };
}

/** Keeps what was measured, as far as this browser keeps anything. */
export function keepScreenScale(scale: ScreenScale): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(scale));
  } catch {
    // It holds until the dialog is closed.
  }
}
