import type { PathSegment } from '../../geometry/flatten.ts';
import { quote } from './faults.ts';
import { MAX_SEGMENTS } from './limits.ts';
import { Scanner } from './scanner.ts';
import { say } from '../../words/en/shapes/read.ts';

/** What was wrong with path data. */
export interface PathFault {
  fault: string;
}

/** Numbers that a command takes. Source: SVG 1.1 §8.3. */
const TAKES: Readonly<Record<string, number>> = { m: 2, l: 2, h: 1, v: 1, c: 6, s: 4, q: 4, t: 2, a: 7, z: 0 };

/** Numbers of an arc that are 0 or 1 and need nothing between them. */
const FLAGS: ReadonlySet<number> = new Set([3, 4]);

/**
 * Reads path data into absolute lines, curves and arcs, smooth ones written out.
 * @param data the attribute, with all the short forms that SVG 1.1 §8.3 allows
 * @returns no segments when the path is empty or 'none'; a fault when it breaks the grammar; one more
 *   than `MAX_SEGMENTS` when it has more
 * Cost: each sign is read once.
 */
export function pathSegments(data: string): PathSegment[] | PathFault {
  const text = data.trim();
  if (text === '' || text === 'none') return [];
  const scanner = new Scanner(text);
  const pen = new Pen();
  while (!scanner.done && pen.segments.length <= MAX_SEGMENTS) {
    const command = scanner.sign;
    const takes = TAKES[command.toLowerCase()];
    if (takes === undefined) return { fault: say.thereIsWhereCommand(shown(scanner)) };
    if (pen.segments.length === 0 && command.toLowerCase() !== 'm') return { fault: say.itDoesNotBegin };
    scanner.at++;
    const fault = readRun(scanner, pen, command, takes);
    if (fault !== null) return fault;
    scanner.skipBlanks();
  }
  return pen.segments;
}

/** All that one command letter stands for. */
function readRun(scanner: Scanner, pen: Pen, command: string, takes: number): PathFault | null {
  let letter = command;
  if (takes === 0) {
    pen.draw(letter, []);
    return null;
  }
  scanner.skipBlanks();
  for (;;) {
    const numbers: number[] = [];
    let comma = false;
    while (numbers.length < takes) {
      const number = takes === 7 && FLAGS.has(numbers.length) ? flag(scanner) : scanner.number();
      if (number === null) return { fault: say.thereIsWhereNumber(shown(scanner), command) };
      if (!Number.isFinite(number)) return { fault: say.numberOfCommandBefore(command, scanner.at + 1) };
      numbers.push(number);
      scanner.skipBlanks();
      comma = scanner.take(',');
      if (comma) scanner.skipBlanks();
    }
    pen.draw(letter, numbers);
    if (!pen.finite) return { fault: say.numberOfCommandBefore(command, scanner.at + 1) };
    // A comma promises one more; else a run ends before anything but a number.
    if (!comma && !/[\d.+-]/u.test(scanner.sign)) return null;
    if (pen.segments.length > MAX_SEGMENTS) return null;
    if (letter === 'M') letter = 'L';
    if (letter === 'm') letter = 'l';
  }
}

function flag(scanner: Scanner): number | null {
  if (scanner.take('0')) return 0;
  return scanner.take('1') ? 1 : null;
}

function shown(scanner: Scanner): string {
  return scanner.done ? say.anEnd : say.atSign(quote(scanner.text.slice(scanner.at, scanner.at + 12), 10), scanner.at + 1);
}

/** Where drawing stands, and what was drawn. */
class Pen {
  readonly segments: PathSegment[] = [];
  private x = 0;
  private y = 0;
  private startX = 0;
  private startY = 0;
  /** The last control point and the kind of curve that it was of; smooth curves mirror it. */
  private control: { kind: 'C' | 'Q'; x: number; y: number } | null = null;

  get finite(): boolean {
    return Number.isFinite(this.x) && Number.isFinite(this.y) && (this.control === null || Number.isFinite(this.control.x + this.control.y));
  }

  /** @param n as many numbers as the command takes */
  draw(letter: string, n: readonly number[]): void {
    const command = letter.toUpperCase();
    const [fromX, fromY] = letter === command ? [0, 0] : [this.x, this.y];
    // Numbers come in pairs but for those of h, v and a, which look at their own.
    const p = n.map((value, i) => value + (i % 2 === 0 ? fromX : fromY));
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = p;
    switch (command) {
      case 'M':
        [this.startX, this.startY] = [a, b];
        return this.add(['M', a, b], a, b);
      case 'L':
        return this.add(['L', a, b], a, b);
      case 'H':
        return this.add(['L', a, this.y], a, this.y);
      case 'V': {
        const y = (n[0] ?? 0) + fromY;
        return this.add(['L', this.x, y], this.x, y);
      }
      case 'C':
        return this.curve([a, b, c, d, e, f]);
      case 'S':
        return this.curve([...this.mirrored('C'), a, b, c, d]);
      case 'Q':
        return this.parabola(a, b, c, d);
      case 'T':
        return this.parabola(...this.mirrored('Q'), a, b);
      case 'A': {
        const [rx = 0, ry = 0, turn = 0, large, sweep, x = 0, y = 0] = n;
        return this.add(['A', rx, ry, turn, large === 1, sweep === 1, x + fromX, y + fromY], x + fromX, y + fromY);
      }
      default:
        return this.add(['Z'], this.startX, this.startY);
    }
  }

  private add(segment: PathSegment, x: number, y: number): void {
    this.segments.push(segment);
    [this.x, this.y] = [x, y];
    this.control = null;
  }

  private curve([x1, y1, x2, y2, x, y]: [number, number, number, number, number, number]): void {
    this.add(['C', x1, y1, x2, y2, x, y], x, y);
    this.control = { kind: 'C', x: x2, y: y2 };
  }

  private parabola(x1: number, y1: number, x: number, y: number): void {
    this.add(['Q', x1, y1, x, y], x, y);
    this.control = { kind: 'Q', x: x1, y: y1 };
  }

  /** The last control point mirrored in the pen; the pen itself after another kind. Source: SVG 1.1 §8.3.6. */
  private mirrored(kind: 'C' | 'Q'): [number, number] {
    const last = this.control;
    return last?.kind === kind ? [2 * this.x - last.x, 2 * this.y - last.y] : [this.x, this.y];
  }
}
