/** A frame that was pulled less long ago is still on the press whatever the opening hours are: shorter than a night (common practice, no source). */
const LEFT_STANDING_MINUTES = 4 * 60;

/**
 * Whether the frame of a pull still stands on the press: pulled since the studio opened today, or a short
 * while ago, also at night and over midnight. What was pulled before a night is washed up.
 * @param ageMinutes how long ago it was pulled
 * @param openMinutes how long the studio has been open today, below 0 before it opens
 */
export function stillOnPress(ageMinutes: number, openMinutes: number): boolean {
  return ageMinutes <= openMinutes || ageMinutes < LEFT_STANDING_MINUTES;
}
