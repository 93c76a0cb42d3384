/** A spread or choke is taken for a mistake beyond this, mm. */
export const MOST_SPREAD_MM = 5;

/** What two tiles share, mm. */
export const OVERLAP_MM = { least: 2, most: 50, usual: 10 } as const;

/** What two sections of a sheet may share, mm: none, edge on edge, up to a strip as wide as twice the narrowest section. */
export const JOINT_MM = { least: 0, most: 40 } as const;

/** More sections of one sheet are taken for a mistake. */
export const MOST_SECTIONS = 100;

/** Sizes of sheets whose cuts are kept; the oldest goes for one more. */
export const MOST_KEPT_CUTS = 40;
