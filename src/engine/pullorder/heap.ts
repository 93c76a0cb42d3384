/** Binary heap of nodes by value; among equals the latest goes first, which dives to a goal. */
export class Heap {
  #values: number[] = [];
  #nodes: number[] = [];

  get size(): number {
    return this.#values.length;
  }

  get least(): number {
    return this.#values[0]!;
  }

  push(value: number, node: number): void {
    const values = this.#values;
    const nodes = this.#nodes;
    let i = values.length;
    values.push(value);
    nodes.push(node);
    while (i > 0) {
      const up = (i - 1) >> 1;
      if (values[up]! < value || (values[up]! === value && nodes[up]! > node)) break;
      values[i] = values[up]!;
      nodes[i] = nodes[up]!;
      i = up;
    }
    values[i] = value;
    nodes[i] = node;
  }

  pop(): number {
    const values = this.#values;
    const nodes = this.#nodes;
    const top = nodes[0]!;
    const value = values.pop()!;
    const node = nodes.pop()!;
    const size = values.length;
    if (size === 0) return top;
    let i = 0;
    for (;;) {
      let down = 2 * i + 1;
      if (down >= size) break;
      const right = down + 1;
      if (right < size && (values[right]! < values[down]! || (values[right]! === values[down]! && nodes[right]! > nodes[down]!))) down = right;
      if (values[down]! > value || (values[down]! === value && nodes[down]! < node)) break;
      values[i] = values[down]!;
      nodes[i] = nodes[down]!;
      i = down;
    }
    values[i] = value;
    nodes[i] = node;
    return top;
  }
}
