import { f64 } from '../base/at.ts';
import type { FilmBands } from '../ink/film/film.ts';

/** Several films as one map of the ground, per band: R = (a·g + b) / (c·g + d), four numbers a band. */
export type FilmProduct = Float64Array;

/** No film: the ground shows. */
export function noFilm(bands: number): FilmProduct {
  return Float64Array.from({ length: 4 * bands }, (_, i) => (i % 4 === 0 || i % 4 === 3 ? 1 : 0));
}

/** Lays a film over all of a product, in place. */
export function layOver(product: FilmProduct, { q, r0, back }: FilmBands): void {
  for (let band = 0; band < q.length; band++) {
    const at = 4 * band;
    const [fq, fr, fb] = [f64(q, band), f64(r0, band), f64(back, band)];
    const [a, b, c, d] = [f64(product, at), f64(product, at + 1), f64(product, at + 2), f64(product, at + 3)];
    product[at] = fq * a + fr * c;
    product[at + 1] = fq * b + fr * d;
    product[at + 2] = c + fb * a;
    product[at + 3] = d + fb * b;
  }
}

/** Lays a film under all of a product, in place. */
export function layUnder(product: FilmProduct, { q, r0, back }: FilmBands): void {
  for (let band = 0; band < q.length; band++) {
    const at = 4 * band;
    const [fq, fr, fb] = [f64(q, band), f64(r0, band), f64(back, band)];
    const [a, b, c, d] = [f64(product, at), f64(product, at + 1), f64(product, at + 2), f64(product, at + 3)];
    product[at] = a * fq + b * fb;
    product[at + 1] = a * fr + b;
    product[at + 2] = c * fq + d * fb;
    product[at + 3] = c * fr + d;
  }
}

/** What a product shows over a ground; out may be the ground. */
export function showOver(product: FilmProduct, ground: Float64Array, out: Float64Array): void {
  for (let band = 0; band < ground.length; band++) {
    const at = 4 * band;
    const g = f64(ground, band);
    out[band] = (f64(product, at) * g + f64(product, at + 1)) / (f64(product, at + 2) * g + f64(product, at + 3));
  }
}
