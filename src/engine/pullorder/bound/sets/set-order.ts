/** One order on a few letters: bits of its letters, and for each letter the bits of those before it. */
export interface SetOrder {
  present: number;
  preds: number[];
}
