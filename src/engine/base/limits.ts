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
/** Sides of a screen's frame inside, mm. */
export const FRAME_SIDE_MM: Limits = { least: 50, most: 5000 };
/** How far a wall may shift, echo and snap pulls, mm; longer than this is taken for a mistake. */
export const OFFSET_RANGE_MM: Limits = { least: 0, most: 1000 };
/** How far a pull may lie from its screen's place, mm. */
export const OFFSET_MM: Limits = { least: -2000, most: 2000 };
/** Strokes of one pull. */
export const STROKES: Limits = { least: 1, most: 20 };
/** Sheets of one visit; of one recipe and of one edition too. */
export const MOST_SHEETS = 500;
/** Pulls of one sheet; more is taken for a mistake. */
export const MOST_PULLS = 200;

/** Pulls that a lesson compares: six have 720 orders, all that are compared within a second. */
export const LESSON_PULLS: Limits = { least: 2, most: 6 };
/** Area that must differ before two prints of a lesson count as two pictures, mm². */
export const LESSON_AREA_MM2: Limits & { readonly usual: number } = { least: 0, most: 400, usual: 25 };

/** How far from the page's corner a drawing or a placed shape may lie, mm: ten metres. */
export const PLACE_MM: Limits = { least: -10_000, most: 10_000 };
/** Sides of a shape, mm. */
export const SHAPE_SIDE_MM: Limits = { least: 0.000_001, most: 20_000 };
/** Sizes that a placed shape may have, as a factor. */
export const SHAPE_SCALE: Limits = { least: 0.0001, most: 100 };
/** Turns, degrees; a hundred whole ones. */
export const TURN_DEG: Limits = { least: -36_000, most: 36_000 };
/** a and b of a Lab colour; spectral lights have up to 220 (from memory). */
export const LAB_AB: Limits = { least: -300, most: 300 };
/** A reflectance; brighteners glow, see MOST_REFLECTANCE of the readings. */
export const REFLECTANCE: Limits = { least: 0, most: 1.2 };
/** How thick a film is on a film, as a share of its thickness on the paper; outside it is no press. */
export const TRAPPING: Limits = { least: 0.3, most: 1.2 };
/** Saunderson's shares: reflected outside, and thrown back inside. No print comes near the ends, from memory. */
export const K1: Limits = { least: 0, most: 0.1 };
export const K2: Limits = { least: 0, most: 0.9 };
/** The brightest band of a paper; the blackest felt gives back 0.3 % (common practice, no source). */
export const PAPER_TOP: Limits = { least: 0.001, most: 1.2 };
/** Corners of one outline. */
export const MOST_CORNERS = 1_000_000;
/** Outlines of one shape. */
export const MOST_RINGS = 200_000;
/** Shapes, screens, inks of a studio or recipe; shapes on a screen; recipes of a project. */
export const MOST_ENTRIES = 10_000;
/** Signs of a name or title. */
export const LONGEST_NAME = 1_000;
/** Signs of a seed or key; those of prints found from prints name their parents. */
export const LONGEST_SEED = 100_000;
/** Signs of a note. */
export const LONGEST_NOTE = 20_000;
/** Sides of a sheet, mm, and how many times the short one the long one may be: beyond, no picture of it can be shown. */
export const PAPER_SIDE_MM: Limits = { least: 0.001, most: 5000 };
export const PAPER_PROPORTION = 25;
/** What is counted without a bound of its own: the place of a print on its wall, pulls that may be left out. */
export const MOST_COUNTED = 1_000_000;
/** Holds of a wall; 200 pulls held in five ways each are 1,000. */
export const MOST_HOLDS = 2_000;

/** Whether a number lies within limits; false for what is no number. */
export function within({ least, most }: Limits, value: number): boolean {
  return value >= least && value <= most;
}
