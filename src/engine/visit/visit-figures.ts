/** The studio's own figures for a visit; all are defaults from common practice that the user changes. */
export interface VisitFigures {
  pullsPerHour: number;
  /** What each stroke after the first of a pull takes. */
  strokeSeconds?: number;
  mountMinutes: number;
  washUpMinutes: number;
  /** Moving the register stops under the same screen. */
  registerMinutes: number;
  days: number;
  /** Hours of press work a day. */
  hoursPerDay: number;
  /** Share of the theoretical ink volume that reaches the paper, 0.5–1; from memory. */
  transfer: number;
  /** Ink left in screen and bucket, mL each time that a bucket is changed; from memory 50–150. */
  lossMl: number;
  /** Overs, share of the sheets. */
  overs: number;
  /** When work begins, minutes after midnight. */
  dayStartMinute?: number;
  /** Lunch, minutes after midnight, and how long; 0 minutes = none. */
  lunchStartMinute?: number;
  lunchMinutes?: number;
  /** Mixing an ink before its first pull. */
  mixMinutes?: number;
  /** Sheets that can lie wet at once; 0 = as many as need be. */
  rackPlaces?: number;
  /** Press beds, each with a printer. */
  beds?: number;
  /** More ink than was worked out, share of it, so that no colour runs out. */
  safety?: number;
  /** Sheets of each recipe pulled as proofs, through all of its set-ups. */
  proofs?: number;
  /** Register that the table holds, mm: offsets nearer than this are one set-up; absent = 0. */
  registrationMm?: number;
}

/** What a visit takes where the studio has said nothing; common practice, no source. */
const DEFAULTS = {
  strokeSeconds: 20,
  dayStartMinute: 9 * 60 + 30,
  lunchStartMinute: 13 * 60,
  lunchMinutes: 30,
  mixMinutes: 10,
  rackPlaces: 0,
  beds: 1,
  safety: 0.1,
  proofs: 1,
  registrationMm: 0,
};

/** A studio's figures with none left open. */
export function wholeFigures<T extends VisitFigures>(figures: T): T & Required<VisitFigures> {
  return { ...DEFAULTS, ...figures };
}
