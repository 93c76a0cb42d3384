import type { InkBasis, Lab } from '../../../engine/ink/types.ts';

/** What a way of adding an ink comes to: all but its name, mesh and figures for the press. */
export interface InkDraft {
  basis: InkBasis;
  overWhite: Lab;
  overBlack: Lab;
  kx: number[];
  sx: number[];
  /** A name to begin with, when the way knows one. */
  name?: string;
}

/** The name itself, or with the first number that makes it the only one. */
export function freeName(name: string, taken: readonly string[]): string {
  if (!taken.includes(name)) return name;
  let number = 2;
  while (taken.includes(`${name} ${number}`)) number++;
  return `${name} ${number}`;
}
