import { demoInks } from '../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../src/engine/ink/demo/demo-paper.ts';
import type { Project } from '../../src/engine/project/types.ts';
import type { Screen, Shape } from '../../src/engine/shapes/types.ts';
import type { Pull } from '../../src/engine/stack/types.ts';

/** A rectangle with its top left at the origin, mm. */
export function rectangle(id: string, widthMm: number, heightMm: number): Shape {
  return {
    id,
    name: id,
    rings: [[0, 0, widthMm, 0, widthMm, heightMm, 0, heightMm]],
    fillRule: 'nonzero',
    widthMm,
    heightMm,
  };
}

/** A screen with one shape, its middle at a place, mm. */
export function screenAt(id: string, number: number, shape: string, xMm: number, yMm: number): Screen {
  return {
    id,
    number,
    name: id,
    placed: [{ shape, xMm, yMm, turnDeg: 0, scale: 1 }],
    mesh: { threadsPerCm: 90, threadUm: 48 },
  };
}

/** A pull with everything at rest. */
export function pullOf(id: string, screen: string, ink: string, change: Partial<Pull> = {}): Pull {
  return { id, screen, ink, dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1, ...change };
}

/** Three overlapping rectangles in three inks; invented. */
export function smallProject(): Project {
  return {
    format: 'pullstack-project',
    version: 1,
    title: 'Three rectangles',
    drawer: {
      shapes: [rectangle('wide', 200, 100), rectangle('tall', 100, 200)],
      screens: [screenAt('s1', 1, 'wide', 200, 200), screenAt('s2', 2, 'tall', 230, 220), screenAt('s3', 3, 'wide', 240, 260)],
      inks: demoInks(),
      paper: DEMO_PAPER,
      strokeGain: 0.4,
    },
    bench: [pullOf('p1', 's1', 'rust'), pullOf('p2', 's2', 'weed'), pullOf('p3', 's3', 'foam')],
    explore: {
      seed: 'small',
      count: 12,
      order: true,
      recolour: true,
      palette: ['rust', 'weed', 'foam', 'tar'],
      offsetRangeMm: 2,
      leaveOut: 0,
      bringIn: 0,
      holds: [],
      minDeltaE: 1,
    },
    recipes: [],
    visit: [],
    press: {
      pullsPerHour: 40,
      mountMinutes: 15,
      washUpMinutes: 15,
      registerMinutes: 5,
      days: 3,
      hoursPerDay: 7,
      transfer: 0.8,
      lossMl: 100,
      overs: 0.12,
      registrationMm: 0.5,
    },
    lesson: [],
  };
}
