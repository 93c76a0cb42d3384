/** No point of a curve is farther than this from the outline that stands for it, mm. */
export const FLATTEN_TOLERANCE_MM = 0.05;

/**
 * Small drawings are flattened finer, to this share of their longer side, because a placed shape
 * can be printed at a scale: an icon of 4 mm enlarged to 400 mm must still be round.
 */
export const FLATTEN_SHARE = 1 / 4000;

/** Longest file read, characters; about 20 MB. */
export const MAX_TEXT = 20_000_000;

/** Elements in a file. */
export const MAX_ELEMENTS = 100_000;

/** Elements drawn, counting each time that a <use> draws one. */
export const MAX_DRAWN = 200_000;

/** Elements inside each other. */
export const MAX_DEPTH = 200;

/** Lines, curves and arcs drawn. */
export const MAX_SEGMENTS = 300_000;

/** Corners of the flattened outlines. */
export const MAX_POINTS = 1_000_000;

/** Work of all booleans of a file, in steps of about a tenth of a microsecond. */
export const MAX_WORK = 10_000_000;

/** Pairs of a style rule and an element. */
export const MAX_RULE_MATCHES = 20_000_000;

/** Characters of all <style> elements together, and of all different style attributes. */
export const MAX_STYLE_TEXT = 1_000_000;

/** Farthest coordinate from the page's corner, mm; the boolean grid ends at 9 m. */
export const MAX_REACH_MM = 4_000;

/** Smallest longer side of a shape, mm; nothing smaller can be held by a mesh. */
export const MIN_SIDE_MM = 0.05;
