import { defined, num } from '../../base/at.ts';

/** Binary heap of nodes by value; among equals the latest goes first, which dives to a goal. */
export class Heap {
  #values: number[] = [];
  #nodes: number[] = [];

  get size(): number {
    return this.#values.length;
  }

  get least(): number {
    return num(this.#values, 0);
  }

  push(value: number, node: number): void {
    const values = this.#values;
    const nodes = this.#nodes;
    let i = values.length;
    values.push(value);
    nodes.push(node);
    while (i > 0) {
      const up = (i - 1) >> 1;
      if (num(values, up) < value || (num(values, up) === value && num(nodes, up) > node)) break;
      values[i] = num(values, up);
      nodes[i] = num(nodes, up);
      i = up;
    }
    values[i] = value;
    nodes[i] = node;
  }

  pop(): number {
    const values = this.#values;
    const nodes = this.#nodes;
    const top = num(nodes, 0);
    const value = defined(values.pop());
    const node = defined(nodes.pop());
    const size = values.length;
    if (size === 0) return top;
    let i = 0;
    for (;;) {
      let down = 2 * i + 1;
      if (down >= size) break;
      const right = down + 1;
      if (
        right < size &&
        (num(values, right) < num(values, down) || (num(values, right) === num(values, down) && num(nodes, right) > num(nodes, down)))
      )
        down = right;
      if (num(values, down) > value || (num(values, down) === value && num(nodes, down) < node)) break;
      values[i] = num(values, down);
      nodes[i] = num(nodes, down);
      i = down;
    }
    values[i] = value;
    nodes[i] = node;
    return top;
  }
}
