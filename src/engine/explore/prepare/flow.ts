import { i32 } from '../../base/at.ts';

/** What is left of a capacity below this share of the largest counts as used up. */
const LEAST_SHARE = 1e-12;

/**
 * A network whose largest flow from node 0 to the last node is found by blocking flows.
 * Source: Dinic (1970), 'Algorithm for solution of a problem of maximum flow in networks with power estimation'.
 */
export class Flow {
  private readonly head: Int32Array;
  private readonly level: Int32Array;
  private readonly turn: Int32Array;
  private readonly next: number[] = [];
  private readonly to: number[] = [];
  private readonly left: number[] = [];
  private least = 0;

  /** @param nodes number of nodes; 0 is the source, the last one the sink */
  constructor(nodes: number) {
    this.head = new Int32Array(nodes).fill(-1);
    this.level = new Int32Array(nodes);
    this.turn = new Int32Array(nodes);
  }

  /** Adds a pipe; Infinity is a capacity too. */
  pipe(from: number, to: number, capacity: number): void {
    this.half(from, to, capacity);
    this.half(to, from, 0);
    if (Number.isFinite(capacity)) this.least = Math.max(this.least, capacity * LEAST_SHARE);
  }

  /** The largest flow, which the capacities at the source must bound. */
  largest(): number {
    let sum = 0;
    while (this.layers()) {
      this.turn.set(this.head);
      for (let sent = this.send(0, Infinity); sent > 0; sent = this.send(0, Infinity)) sum += sent;
    }
    return sum;
  }

  /** After `largest`: whether more could still reach a node from the source. */
  reached(node: number): boolean {
    return i32(this.level, node) >= 0;
  }

  private half(from: number, to: number, capacity: number): void {
    this.next.push(i32(this.head, from));
    this.to.push(to);
    this.left.push(capacity);
    this.head[from] = this.to.length - 1;
  }

  /** Distances from the source through pipes with room; false when the sink cannot be reached. */
  private layers(): boolean {
    this.level.fill(-1);
    this.level[0] = 0;
    const queue = [0];
    for (const node of queue) {
      for (let pipe = i32(this.head, node); pipe >= 0; pipe = this.next[pipe] ?? -1) {
        const to = this.to[pipe] ?? 0;
        if ((this.left[pipe] ?? 0) <= this.least || i32(this.level, to) >= 0) continue;
        this.level[to] = i32(this.level, node) + 1;
        queue.push(to);
      }
    }
    return i32(this.level, this.level.length - 1) >= 0;
  }

  /** Calls itself along a shortest way, which passes each screen once: at most two steps a screen. */
  private send(node: number, limit: number): number {
    if (node === this.level.length - 1) return limit;
    for (let pipe = i32(this.turn, node); pipe >= 0; pipe = this.next[pipe] ?? -1) {
      this.turn[node] = pipe;
      const to = this.to[pipe] ?? 0;
      const room = this.left[pipe] ?? 0;
      if (room <= this.least || i32(this.level, to) !== i32(this.level, node) + 1) continue;
      const sent = this.send(to, Math.min(limit, room));
      if (sent <= 0) continue;
      this.left[pipe] = room - sent;
      this.left[pipe ^ 1] = (this.left[pipe ^ 1] ?? 0) + sent;
      return sent;
    }
    this.turn[node] = -1;
    return 0;
  }
}
