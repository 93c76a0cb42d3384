/** What a number may be, both ends included. */
export interface Limits {
  readonly least: number;
  readonly most: number;
}

/** Wet density of an ink, g/cm³: heavy metal pigments reach 4 and more; from memory. */
export const DENSITY_G_PER_CM3: Limits = { least: 0.5, most: 5 };
/** How far a wall may shift, echo and snap pulls, mm; longer than this is taken for a mistake. */
export const SHIFT_MM: Limits = { least: 0, most: 1000 };
/** How far a pull may lie from its screen's place, mm. */
export const OFFSET_MM: Limits = { least: -2000, most: 2000 };
/** Strokes of one pull. */
export const STROKES: Limits = { least: 1, most: 20 };
/** Sheets of one visit; of one recipe and of one edition too. */
export const MOST_SHEETS = 500;
/** Pulls of one sheet; more is taken for a mistake. */
export const MOST_PULLS = 200;

/** Pulls that a lesson compares: five have 120 orders, more than can be looked at. */
export const LESSON_PULLS: Limits = { least: 2, most: 5 };

/** Whether a number lies within limits; false for what is no number. */
export function within({ least, most }: Limits, value: number): boolean {
  return value >= least && value <= most;
}
