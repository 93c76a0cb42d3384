/** A spread or choke is taken for a mistake beyond this, mm. */
export const MOST_SPREAD_MM = 5;

/** What two tiles share, mm. */
export const OVERLAP_MM = { least: 2, most: 50, usual: 10 } as const;
