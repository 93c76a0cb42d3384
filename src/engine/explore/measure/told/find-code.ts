import { LaneCode, type Lanes, type Whole } from '../../../base/lanes/lane-code.ts';
import { arithmetic } from '../../../colour/delta-e-code.ts';
import { LEAST_TURN, MOST_G, MOST_GAIN, SIN_60 } from './reach-code.ts';
import { ASK, NAME, NEXT } from './told-names.ts';

const WORD = 4;
/**
 * Above this a sum of two squares is more than 1 for sure. Single precision holds L, a and b up to 2,000 to 6·10⁻⁵, so that the
 * differences of which the sum is made up are right to 2·10⁻³ of a reach of 0.1 or more.
 */
const MORE_THAN_1 = 1.01;

/**
 * Pairs colours that are asked about with the colours of their bins that they may be near, in the order in which these came. Called with how
 * many are asked about and the addresses of what is asked, of ends and of pairs. Every colour of a block is put down and
 * what may not be near written over, as branches that cannot be foreseen would cost more.
 */
export function findCode(): Uint8Array<ArrayBuffer> {
  return pairCode((code, [l, a, b], block) => {
    const [otherL, otherA, otherB, shareL, shareNear, shareFar] = numbers(code, block, 6) as [
      Lanes,
      ...[Lanes, Lanes, Lanes, Lanes, Lanes],
    ];
    const [dl, da, db] = [code.sub(otherL, l), code.sub(otherA, a), code.sub(otherB, b)];
    const inAb = code.mul(code.add(code.mul(da, da), code.mul(db, db)), code.choose(warm(code, b, otherB), shareNear, shareFar));
    return code.atLeast(code.number(MORE_THAN_1), code.add(code.mul(code.mul(dl, dl), shareL), inAb));
  });
}

/**
 * The same with swatches, by what `ReachCode` says of two colours rather than of all about one: (ΔL ÷ S_L)² + (1 − |R_T| ÷ 2)·(D ÷ S_C)² ≤ ΔE²,
 * with S_L ≤ 1 + 0.015·|L̄ − 50|, mean chromas as they are, and √(C⁷ ÷ (C⁷ + 25⁷)) at most 1 and at most (C ÷ 25)³.
 */
export function findSwatchCode(deltaE: number): Uint8Array<ArrayBuffer> {
  return pairCode((code, [l, a, b, chroma], block) => {
    const n = (value: number): Lanes => code.number(value);
    const { add, sub, mul } = arithmetic(code);
    const square = (value: Lanes): Lanes => mul(value, value);
    const least = (one: Lanes, other: Lanes): Lanes => code.choose(code.above(one, other), other, one);
    const [otherL, otherA, otherB, otherChroma] = numbers(code, block, 4) as [Lanes, Lanes, Lanes, Lanes];
    const twice = add(chroma, otherChroma);
    const sL = square(add(n(1), mul(n(0.0075), code.abs(sub(add(l, otherL), n(100))))));
    const sC = square(least(add(n(1), mul(n(0.0225 * MOST_G), twice)), add(n(1 + 0.045 * MOST_GAIN), mul(n(0.0225), twice))));
    const share = mul(add(twice, n(2 * MOST_GAIN)), n(1 / 50));
    const turned = sub(n(1), mul(n(SIN_60), least(n(1), mul(square(share), share))));
    const left = code.choose(warm(code, b, otherB), n(1 - LEAST_TURN), turned);
    const inAb = mul(mul(add(square(sub(otherA, a)), square(sub(otherB, b))), left), sL);
    return code.atLeast(mul(mul(n(MORE_THAN_1 * deltaE * deltaE), sL), sC), add(mul(square(sub(otherL, l)), sC), inAb));
  });
}

/** Numbers of the four colours of a block. */
function numbers(code: LaneCode, block: Whole, count: number): Lanes[] {
  return Array.from({ length: count }, (_, i) => code.load(block, 4 * i));
}

function warm(code: LaneCode, b: Lanes, otherB: Lanes): Lanes {
  return code.and(code.atLeast(b, code.number(0)), code.atLeast(otherB, code.number(0)));
}

/** @param mayBeNear a mask of the colours of a block that one which is asked about may be near: its L, a, b and chroma */
function pairCode(
  mayBeNear: (code: LaneCode, asked: readonly [l: Lanes, a: Lanes, b: Lanes, chroma: Lanes], block: Whole) => Lanes,
): Uint8Array<ArrayBuffer> {
  const code = new LaneCode(4, true);
  const [step, none] = [code.variable(0), code.variable(0)];
  const [start, end] = [code.param(3), code.offset(code.param(3), none, 0)];
  code.loop(step, [code.param(0), 1], () => {
    const asked = code.offset(code.param(1), step, ASK * WORD);
    const colour = [0, 1, 2, 5].map((i) => code.spread(asked, i)) as [Lanes, Lanes, Lanes, Lanes];
    const name = code.wholeAt(asked, 4 * WORD);
    const block = code.wholeAt(asked, 3 * WORD);
    code.chase(block, () => {
      const near = mayBeNear(code, colour, block);
      for (let lane = 0; lane < 4; lane++) {
        code.storeWhole(end, 0, code.wholeAt(block, (NAME + lane) * WORD));
        code.storeWhole(end, WORD, name);
        code.put(end, code.offset(end, code.isSet(near, lane), 2 * WORD));
      }
      return code.wholeAt(block, NEXT * WORD);
    });
    code.storeWhole(code.offset(code.param(2), step, WORD), 0, code.share(code.offset(end, start, -1), 3));
  });
  return code.module();
}
