/** What the tests use of spectral.js, which brings no types. */
declare module 'spectral.js' {
  export class Color {
    /** @param value a CSS colour, or a reflectance of 38 bands from 380 nm. */
    constructor(value: string | number[]);
    R: number[];
    luminance: number;
    tintingStrength: number;
  }
  export function mix(...parts: [Color, number][]): Color;
}
