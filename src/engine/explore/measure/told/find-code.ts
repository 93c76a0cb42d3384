import { LaneCode, type Lanes } from '../../../base/lanes/lane-code.ts';
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
  const code = new LaneCode(4, true);
  const [step, none] = [code.variable(0), code.variable(0)];
  const [start, end] = [code.param(3), code.offset(code.param(3), none, 0)];
  code.loop(step, [code.param(0), 1], () => {
    const asked = code.offset(code.param(1), step, ASK * WORD);
    const [l, a, b] = [0, 1, 2].map((i) => code.spread(asked, i)) as [Lanes, Lanes, Lanes];
    const name = code.wholeAt(asked, 4 * WORD);
    const block = code.wholeAt(asked, 3 * WORD);
    code.chase(block, () => {
      const [otherL, otherA, otherB, shareL, shareNear, shareFar] = [0, 1, 2, 3, 4, 5].map((i) => code.load(block, 4 * i)) as [
        ...[Lanes, Lanes, Lanes],
        ...[Lanes, Lanes, Lanes],
      ];
      const [dl, da, db] = [code.sub(otherL, l), code.sub(otherA, a), code.sub(otherB, b)];
      const warm = code.and(code.atLeast(b, code.number(0)), code.atLeast(otherB, code.number(0)));
      const inAb = code.mul(code.add(code.mul(da, da), code.mul(db, db)), code.choose(warm, shareNear, shareFar));
      const near = code.atLeast(code.number(MORE_THAN_1), code.add(code.mul(code.mul(dl, dl), shareL), inAb));
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
