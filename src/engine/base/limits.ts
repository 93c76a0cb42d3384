/** What a number may be, both ends included. */
export interface Limits {
  readonly least: number;
  readonly most: number;
}

/** Wet density of an ink, g/cm³: heavy metal pigments reach 4 and more; from memory. */
export const DENSITY_G_PER_CM3: Limits = { least: 0.5, most: 5 };
/** Minutes until another film can go over an ink: up to a week. */
export const DRY_MINUTES: Limits = { least: 0, most: 10_080 };
/** Minutes until sheets can be stacked on an ink: up to two weeks. */
export const STACK_MINUTES: Limits = { least: 0, most: 20_160 };
/** Threads of a mesh, per cm. */
export const THREADS_PER_CM: Limits = { least: 5, most: 200 };
/** Thickness of a mesh's thread, µm. */
export const THREAD_UM: Limits = { least: 10, most: 500 };
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
