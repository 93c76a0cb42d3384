import { entryAt, f64, num } from '../../base/at.ts';
import { deltaE2000Parts, deltaE2000Values } from '../../colour/delta-e.ts';
import { labFromXyzD50, xyzD50FromLab, type Lab } from '../../colour/lab.ts';
import { BANDS, WEIGHTS_D50 } from '../../colour/weights.ts';
import { filmOver } from '../film/film-slope.ts';
import { realSurface } from '../film/printing.ts';
import { curveInside, readThrough, type Surface } from '../film/saunderson.ts';

// The module's own names: unbundled, hot loops would look up another module's each time.
const bandCount = BANDS;
const { x: weightX, y: weightY, z: weightZ } = WEIGHTS_D50;
const over = filmOver;
const partsOf = deltaE2000Parts;
const differenceOf = deltaE2000Values;
const labOf = labFromXyzD50;

// Below this chroma hue has no direction to follow, and differences in a and b serve as well.
const GREY_CHROMA = 3;
const STEP = 1e-6;

/** Absorption and scattering of one film of a stock ink as printed, a value a band. */
export interface StockCurves {
  k: Float64Array;
  s: Float64Array;
}

/**
 * What mixes of stock inks look like over a ground, how far that is from a target, and how it
 * changes with each share. Allocates nothing once it is made.
 */
export class MixColour {
  /** Three residuals whose squares add up to about ΔE00². */
  readonly residual = new Float64Array(3);
  /** residuals × inks: how they change with each share by volume. */
  readonly slope = new Float64Array(3 * 8);
  private readonly stocks: readonly StockCurves[];
  /** Reflectance inside the surface. */
  private readonly ground: Float64Array;
  private readonly surface: Surface | undefined;
  private readonly target: Lab;
  private readonly grey: boolean;
  private readonly xyz = new Float64Array(3);
  private readonly xyzSlope = new Float64Array(3 * 8);
  /** What `over` gives: reflectance and its slopes with k and s. */
  private readonly shown = new Float64Array(3);
  private readonly parts = new Float64Array(4);
  private readonly moved = new Float64Array(3);

  /**
   * @param ground reflectance as read, 36 bands
   * @param surface that ground and mixes are seen through; left out, there is none
   */
  constructor(stocks: readonly StockCurves[], ground: ArrayLike<number>, target: Readonly<Lab>, surface?: Surface) {
    this.stocks = stocks;
    this.surface = realSurface(surface);
    this.ground = curveInside(ground, this.surface);
    this.target = [...target];
    this.grey = Math.hypot(target[1], target[2]) < GREY_CHROMA;
  }

  /**
   * ΔE00 of a mix from the target; leaves the residuals.
   * @param inks which stocks
   * @param shares by volume, one an ink, summing to 1
   */
  deltaE(inks: readonly number[], shares: ArrayLike<number>): number {
    this.sumBands(inks, shares, false);
    const [l, a, b] = labOf(f64(this.xyz, 0), f64(this.xyz, 1), f64(this.xyz, 2));
    this.residualOf(l, a, b, this.residual);
    const t = this.target;
    return differenceOf(t[0], t[1], t[2], l, a, b);
  }

  /** Fills `slope` for a mix; `residual` as well. */
  slopes(inks: readonly number[], shares: ArrayLike<number>): void {
    this.sumBands(inks, shares, true);
    const { xyz, xyzSlope, slope, residual, moved } = this;
    const [l, a, b] = labOf(f64(xyz, 0), f64(xyz, 1), f64(xyz, 2));
    this.residualOf(l, a, b, residual);
    slope.fill(0);
    for (let axis = 0; axis < 3; axis++) {
      const h = STEP * (f64(xyz, axis) + 0.01);
      const kept = f64(xyz, axis);
      xyz[axis] = kept + h;
      const [l2, a2, b2] = labOf(f64(xyz, 0), f64(xyz, 1), f64(xyz, 2));
      xyz[axis] = kept;
      this.residualOf(l2, a2, b2, moved);
      for (let i = 0; i < inks.length; i++) {
        const along = f64(xyzSlope, axis * 8 + i) / h;
        for (let row = 0; row < 3; row++) slope[row * 8 + i] = f64(slope, row * 8 + i) + (f64(moved, row) - f64(residual, row)) * along;
      }
    }
  }

  /** Reflectance of a mix over the ground, a new array. */
  reflectance(inks: readonly number[], shares: ArrayLike<number>): Float64Array {
    const out = new Float64Array(bandCount);
    for (let band = 0; band < bandCount; band++) {
      let k = 0;
      let s = 0;
      for (let i = 0; i < inks.length; i++) {
        k += num(shares, i) * f64(entryAt(this.stocks, num(inks, i)).k, band);
        s += num(shares, i) * f64(entryAt(this.stocks, num(inks, i)).s, band);
      }
      over(k, s, f64(this.ground, band), this.shown);
      if (this.surface !== undefined) seenThrough(this.shown, this.surface);
      out[band] = f64(this.shown, 0);
    }
    return out;
  }

  private sumBands(inks: readonly number[], shares: ArrayLike<number>, withSlopes: boolean): void {
    const { stocks, ground, xyz, xyzSlope, shown, surface } = this;
    xyz.fill(0);
    if (withSlopes) xyzSlope.fill(0);
    const count = inks.length;
    for (let band = 0; band < bandCount; band++) {
      let k = 0;
      let s = 0;
      for (let i = 0; i < count; i++) {
        const stock = entryAt(stocks, num(inks, i));
        k += num(shares, i) * f64(stock.k, band);
        s += num(shares, i) * f64(stock.s, band);
      }
      over(k, s, f64(ground, band), shown);
      if (surface !== undefined) seenThrough(shown, surface);
      const r = f64(shown, 0);
      const x = num(weightX, band);
      const y = num(weightY, band);
      const z = num(weightZ, band);
      xyz[0] = f64(xyz, 0) + x * r;
      xyz[1] = f64(xyz, 1) + y * r;
      xyz[2] = f64(xyz, 2) + z * r;
      if (!withSlopes) continue;
      const rk = f64(shown, 1);
      const rs = f64(shown, 2);
      for (let i = 0; i < count; i++) {
        const stock = entryAt(stocks, num(inks, i));
        const along = rk * f64(stock.k, band) + rs * f64(stock.s, band);
        xyzSlope[i] = f64(xyzSlope, i) + x * along;
        xyzSlope[8 + i] = f64(xyzSlope, 8 + i) + y * along;
        xyzSlope[16 + i] = f64(xyzSlope, 16 + i) + z * along;
      }
    }
  }

  /** CIEDE2000 as three residuals; its rotation goes into the second and third. */
  private residualOf(l: number, a: number, b: number, out: Float64Array): void {
    const t = this.target;
    const { parts } = this;
    partsOf(t[0], t[1], t[2], l, a, b, parts);
    out[0] = f64(parts, 0);
    if (this.grey) {
      out[1] = a - t[1];
      out[2] = b - t[2];
      return;
    }
    const half = f64(parts, 3) / 2;
    out[1] = f64(parts, 1) + half * f64(parts, 2);
    out[2] = Math.sqrt(Math.max(0, 1 - half * half)) * f64(parts, 2);
  }
}

/** Turns a reflectance and its slopes, as `over` gives them, into those of what is read. */
function seenThrough(shown: Float64Array, surface: Surface): void {
  const r = f64(shown, 0);
  const { k1, k2 } = surface;
  // d Rm / dR = (1 − k1)(1 − k2) / (1 − k2 R)².
  const rise = ((1 - k1) * (1 - k2)) / (1 - k2 * r) ** 2;
  shown[0] = readThrough(r, surface);
  shown[1] = f64(shown, 1) * rise;
  shown[2] = f64(shown, 2) * rise;
}

/** A target that no reflectance is needed for: whether it has three finite numbers and a possible L. */
export function isColour(lab: Readonly<Lab>): boolean {
  return (
    lab.length === 3 &&
    lab.every((value) => Number.isFinite(value)) &&
    lab[0] >= 0 &&
    lab[0] <= 100 &&
    xyzD50FromLab(lab).every((value) => value >= -1e-9)
  );
}
