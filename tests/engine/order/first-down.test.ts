import { describe, expect, it } from 'vitest';
import { possibleFirsts, tellingGroups } from '../../../src/engine/order/first-down.ts';

describe('possibleFirsts', () => {
  it('should name every pull that can have gone down first in a picture', () => {
    // Pulls 0 and 1 overlap, 2 lies apart: two pictures, each of three orders.
    const orders = [
      [0, 1, 2],
      [0, 2, 1],
      [2, 0, 1],
      [1, 0, 2],
      [1, 2, 0],
      [2, 1, 0],
    ];
    const groups = [
      [0, 1, 2],
      [3, 4, 5],
    ];
    expect(possibleFirsts({ orders, groups }, 0)).toEqual([0, 2]);
    expect(possibleFirsts({ orders, groups }, 1)).toEqual([1, 2]);
  });
});

describe('tellingGroups', () => {
  it('should leave out pictures of which any of several pulls can have been first, while there are others', () => {
    const orders = [
      [0, 1, 2],
      [0, 2, 1],
      [1, 2, 0],
      [2, 1, 0],
    ];
    expect(
      tellingGroups({
        orders,
        groups: [
          [0, 1],
          [2, 3],
        ],
      }),
    ).toEqual([0]);
    expect(
      tellingGroups({
        orders,
        groups: [
          [0, 2],
          [1, 3],
        ],
      }),
    ).toEqual([0, 1]);
  });
});
