import type { Paper } from '../types.ts';

/**
 * The demo's paper, invented: a warm white mould-made sheet without brightener, the reflectance
 * dropping gently towards violet.
 */
export const DEMO_PAPER: Paper = {
  name: 'Harbour rag, warm white',
  widthMm: 560,
  heightMm: 760,
  printable: { xMm: 30, yMm: 30, widthMm: 500, heightMm: 700 },
  reflectance: [
    0.655, 0.69, 0.722, 0.75, 0.773, 0.79, 0.803, 0.814, 0.823, 0.831, 0.838, 0.844, 0.85, 0.855, 0.86, 0.864, 0.868, 0.872, 0.875, 0.878,
    0.881, 0.883, 0.885, 0.887, 0.889, 0.891, 0.892, 0.893, 0.894, 0.895, 0.896, 0.897, 0.898, 0.899, 0.9, 0.9,
  ],
};
