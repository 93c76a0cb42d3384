import { describe, expect, it } from 'vitest';
import { CodeRoom } from '../../../src/engine/base/code/code-room.ts';

describe('CodeRoom', () => {
  it('should find lists where they lie now, whichever outgrow their rooms, and leave the others as they are', () => {
    const room = new CodeRoom(['count', 'weights', 'values', 'sum'], (code, lists) => {
      const [i, sum] = [code.int(), code.real(0)];
      code.upTo(i, lists.int('count'), () => code.set(sum, sum.plus(lists.reals('weights').at(i).times(lists.reals('values').at(i)))));
      code.put(lists.reals('sum'), 0, sum);
    });
    const weightsOf = (count: number): Float64Array => Float64Array.from({ length: count }, (_, i) => (i % 7) - 3);
    const lay = (count: number, weights: number): { weightsAt: number; valuesAt: number; sumAt: number } => {
      room.begin();
      room.int('count', count);
      const weightsAt = room.realList('weights', weights);
      const at = { weightsAt, valuesAt: room.realList('values', count), sumAt: room.realList('sum', 1) };
      room.fit();
      return at;
    };
    const { weightsAt } = lay(1, 5000);
    room.reals.set(weightsOf(5000), weightsAt);
    for (const count of [1, 3000, 5000, 2]) {
      const at = lay(count, 5000);
      expect(at.weightsAt).toBe(weightsAt);
      for (let i = 0; i < count; i++) room.reals[at.valuesAt + i] = i * i;
      room.call();
      expect(room.reals[at.sumAt]).toBe(weightsOf(count).reduce((sum, weight, i) => sum + weight * i * i, 0));
    }
    const at = lay(3, 200_000);
    room.reals.set(weightsOf(200_000), at.weightsAt);
    room.reals.set([10, 20, 30], at.valuesAt);
    room.call();
    expect(room.reals[at.sumAt]).toBe(-30 - 40 - 30);
  });
});
