/**
 * What a film shows over a ground in one band, and how that changes with its absorption and
 * scattering: for searches, which call it a million times.
 * @param k K·X, ≥ 0, finite
 * @param s S·X, ≥ 0, finite
 * @param g reflectance of the ground
 * @param out receives R, ∂R/∂k and ∂R/∂s
 * Source: as filmMatrix, R = N / M with N = (c − (k+s)·sh)·g + s·sh and M = c + (k+s)·sh − s·sh·g,
 * c = cosh α, sh = sinh α / α, α² = k(k + 2s); differentiated by hand.
 */
export function filmOver(k: number, s: number, g: number, out: Float64Array): void {
  const square = k * (k + 2 * s);
  let c: number;
  let sh: number;
  // d sh / d(α²); d c / d(α²) is sh / 2.
  let shSlope: number;
  if (square < 1e-4) {
    c = 1 + square / 2 + (square * square) / 24;
    sh = 1 + square / 6 + (square * square) / 120;
    shSlope = 1 / 6 + square / 60 + (square * square) / 1680;
  } else {
    // All scaled by 2e^−α, which cancels in R and keeps dense films from overflowing.
    const alpha = Math.sqrt(square);
    const fall = Math.exp(-2 * alpha);
    c = 1 + fall;
    sh = (1 - fall) / alpha;
    shSlope = (c - sh) / (2 * square);
  }
  const ks = k + s;
  const n = (c - ks * sh) * g + s * sh;
  const m = c + ks * sh - s * sh * g;
  const r = n / m;
  const shK = 2 * ks * shSlope;
  const cK = ks * sh;
  const nK = (cK - sh - ks * shK) * g + s * shK;
  const mK = cK + sh + ks * shK - s * shK * g;
  const shS = 2 * k * shSlope;
  const cS = k * sh;
  const nS = (cS - sh - ks * shS) * g + sh + s * shS;
  const mS = cS + sh + ks * shS - (sh + s * shS) * g;
  out[0] = r;
  out[1] = (nK - r * mK) / m;
  out[2] = (nS - r * mS) / m;
}
