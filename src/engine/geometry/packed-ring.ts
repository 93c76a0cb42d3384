import { num } from '../base/at.ts';
import type { Ring } from './types.ts';

/** Corners lie on this many parts of a millimetre. */
const PER_MM = 10_000;
/** Third differences: along a cubic curve cut at equal steps they are one number. */
const ORDER = 3;

/** Signs of five bits each; those of the second half say that more follow. */
const SIGNS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const BITS = 32;

function differences(values: readonly number[]): number[] {
  return values.map((value, i) => (i === 0 ? value : value - num(values, i - 1)));
}

function sums(values: readonly number[]): number[] {
  let sum = 0;
  return values.map((value) => (sum += value));
}

function times(order: number, change: (values: readonly number[]) => number[], values: readonly number[]): number[] {
  return Array.from({ length: order }).reduce<number[]>((done) => change(done), [...values]);
}

/** A whole number in variable length, its lowest bit the sign. Source: 'Base 64 VLQ', ECMA-426 (source maps), with other signs. */
function written(value: number): string {
  let rest = value < 0 ? -2 * value - 1 : 2 * value;
  let text = '';
  do {
    const low = rest % BITS;
    rest = Math.floor(rest / BITS);
    text += SIGNS[rest > 0 ? low + BITS : low];
  } while (rest > 0);
  return text;
}

function* read(text: string): Generator<number> {
  let [value, scale] = [0, 1];
  for (const sign of text) {
    const bits = SIGNS.indexOf(sign);
    value += (bits % BITS) * scale;
    scale *= BITS;
    if (bits >= BITS) continue;
    yield value % 2 === 0 ? value / 2 : -(value + 1) / 2;
    [value, scale] = [0, 1];
  }
}

/** A ring as text, a third of its numbers written out; corners are rounded to a tenth of a µm. */
export function packRing(ring: Ring): string {
  const whole = Array.from(ring, (value) => Math.round(value * PER_MM));
  const [across, down] = [0, 1].map((side) =>
    times(
      ORDER,
      differences,
      whole.filter((_, i) => i % 2 === side),
    ),
  );
  return [...(across ?? []), ...(down ?? [])].map(written).join('');
}

/** The ring that `packRing` packed, mm. */
export function unpackRing(text: string): number[] {
  const values = [...read(text)];
  const corners = values.length / 2;
  const across = times(ORDER, sums, values.slice(0, corners));
  const down = times(ORDER, sums, values.slice(corners));
  return across.flatMap((x, i) => [x / PER_MM, num(down, i) / PER_MM]);
}
