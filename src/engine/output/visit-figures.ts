/** The studio's own figures for a visit; all are defaults from common practice that the user changes. */
export interface VisitFigures {
  pullsPerHour: number;
  mountMinutes: number;
  washUpMinutes: number;
  /** Moving the lays under the same screen. */
  registerMinutes: number;
  days: number;
  /** Hours of press work a day. */
  hoursPerDay: number;
  /** Share of the theoretical ink volume that reaches the paper, 0.5–1; from memory. */
  transfer: number;
  /** Ink left in screen and bucket, mL a colour; from memory 50–150. */
  lossMl: number;
  /** Overs, share of the sheets. */
  overs: number;
}
