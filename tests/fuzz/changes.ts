/** What is put in, taken out or written over; `at` and `to` are shares of the text, in millionths. */
export interface Change {
  kind: 'number' | 'put' | 'repeat' | 'drop' | 'move' | 'end' | 'sign' | 'splice';
  at: number;
  to: number;
  what: number;
  times: number;
}

/** Larger texts are cut before they are tried, so that repeats of repeats stay within what a file may be. */
export const LONGEST = 2_000_000;
