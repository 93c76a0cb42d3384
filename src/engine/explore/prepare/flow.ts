import { f64, i32 } from '../../base/at.ts';

/** What is left of a capacity below this share of the largest counts as used up. */
const LEAST_SHARE = 1e-12;

/**
 * A network whose largest flow from node 0 to the last node is found by blocking flows. Its pipes stay, so that
 * one network answers for many capacities.
 * Source: Dinic (1970), 'Algorithm for solution of a problem of maximum flow in networks with power estimation'.
 */
export class Flow {
  private readonly head: Int32Array;
  private readonly level: Int32Array;
  private readonly turn: Int32Array;
  private readonly queue: Int32Array;
  private readonly next: Int32Array;
  private readonly to: Int32Array;
  private readonly capacity: Float64Array;
  private readonly left: Float64Array;
  private halves = 0;
  private least = 0;

  /**
   * @param nodes number of nodes; 0 is the source, the last one the sink
   * @param pipes number of pipes at most
   */
  constructor(nodes: number, pipes: number) {
    this.head = new Int32Array(nodes).fill(-1);
    this.level = new Int32Array(nodes);
    this.turn = new Int32Array(nodes);
    this.queue = new Int32Array(nodes);
    this.next = new Int32Array(2 * pipes);
    this.to = new Int32Array(2 * pipes);
    this.capacity = new Float64Array(2 * pipes);
    this.left = new Float64Array(2 * pipes);
  }

  /**
   * Adds a pipe; Infinity is a capacity too.
   * @returns its number
   */
  pipe(from: number, to: number, capacity: number): number {
    const pipe = this.half(from, to, capacity);
    this.half(to, from, 0);
    return pipe;
  }

  /** Gives a pipe another capacity. */
  widen(pipe: number, capacity: number): void {
    this.capacity[pipe] = capacity;
  }

  /** The largest flow, which the capacities at the source must bound. */
  largest(): number {
    this.left.set(this.capacity);
    let widest = 0;
    for (const capacity of this.capacity) if (capacity > widest && Number.isFinite(capacity)) widest = capacity;
    this.least = widest * LEAST_SHARE;
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

  private half(from: number, to: number, capacity: number): number {
    const half = this.halves++;
    this.next[half] = i32(this.head, from);
    this.to[half] = to;
    this.capacity[half] = capacity;
    this.head[from] = half;
    return half;
  }

  /** Distances from the source through pipes with room; false when the sink cannot be reached. */
  private layers(): boolean {
    const { head, level, queue, next, to, left, least } = this;
    level.fill(-1);
    level[0] = 0;
    let known = 1;
    for (let at = 0; at < known; at++) {
      const node = i32(queue, at);
      const further = i32(level, node) + 1;
      for (let pipe = i32(head, node); pipe >= 0; pipe = i32(next, pipe)) {
        const end = i32(to, pipe);
        if (f64(left, pipe) <= least || i32(level, end) >= 0) continue;
        level[end] = further;
        queue[known++] = end;
      }
    }
    return i32(level, level.length - 1) >= 0;
  }

  /** Calls itself along a shortest way, which passes each screen once: at most two steps a screen. */
  private send(node: number, limit: number): number {
    const { level, left, least } = this;
    if (node === level.length - 1) return limit;
    const further = i32(level, node) + 1;
    for (let pipe = i32(this.turn, node); pipe >= 0; pipe = i32(this.next, pipe)) {
      this.turn[node] = pipe;
      const to = i32(this.to, pipe);
      const room = f64(left, pipe);
      if (room <= least || i32(level, to) !== further) continue;
      const sent = this.send(to, Math.min(limit, room));
      if (sent <= 0) continue;
      left[pipe] = room - sent;
      left[pipe ^ 1] = f64(left, pipe ^ 1) + sent;
      return sent;
    }
    this.turn[node] = -1;
    return 0;
  }
}
