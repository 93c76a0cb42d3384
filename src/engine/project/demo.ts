import { defined } from '../base/at.ts';
import { EngineError } from '../base/error.ts';
import { demoInks } from '../ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../ink/demo/demo-paper.ts';
import { readShapes } from '../shapes/read/read-shapes.ts';
import type { PlacedShape, Screen, Shape } from '../shapes/types.ts';
import type { Pull } from '../stack/types.ts';
import { DEMO_BENCH, DEMO_LESSON, DEMO_SCREENS } from './demo-layout.ts';
import type { DemoPlace, DemoPull } from './demo-layout.ts';
import { PROJECT_FORMAT, PROJECT_VERSION } from './types.ts';
import type { PressSettings, Project } from './types.ts';

/** A file of the folder shapes/. */
export interface DemoFile {
  /** With or without its folder: 'cleat.svg'. */
  name: string;
  text: string;
}

/** Defaults of the studio: common practice, no source, or from memory; the user changes them. */
const PRESS: PressSettings = {
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
};

/** Each stroke after the first adds this share of its film; from memory 0.2–0.6. */
const STROKE_GAIN = 0.4;

/**
 * The demo project 'Slack tide': a harbour at low water in twelve shapes and eight invented inks.
 * @param files the twelve files of shapes/, in any order
 * @returns a new project, the same for the same files
 * @throws EngineError 'demo.shape' when a file is missing or cannot be read whole
 */
export function demoProject(files: readonly DemoFile[]): Project {
  const shapes = files.map(toShape).sort((a, b) => (a.id < b.id ? -1 : 1));
  const known = new Set(shapes.map((shape) => shape.id));
  const screens = DEMO_SCREENS.map(([id, name, ...places], i): Screen => ({
    id,
    number: i + 1,
    name,
    placed: places.map((place) => toPlaced(place, known)),
    mesh: { threadsPerCm: 90, threadUm: 48 },
  }));
  const inks = demoInks();
  const bench = DEMO_BENCH.map(toPull);
  return {
    format: PROJECT_FORMAT,
    version: PROJECT_VERSION,
    title: 'Slack tide',
    drawer: { shapes, screens, inks, paper: DEMO_PAPER, strokeGain: STROKE_GAIN },
    bench,
    explore: {
      seed: 'slack tide',
      count: 200,
      order: true,
      recolour: true,
      palette: inks.map((ink) => ink.id),
      offsetRangeMm: 3,
      leaveOut: 2,
      bringIn: 2,
      holds: [],
      minDeltaE: 1,
    },
    recipes: [],
    visit: [],
    press: { ...PRESS },
    lesson: bench.filter((pull) => DEMO_LESSON.includes(pull.screen)).map((pull) => ({ ...pull })),
  };
}

function toShape(file: DemoFile): Shape {
  const fileName = defined(file.name.split('/').at(-1));
  const { shapes, problems } = readShapes(file.text, fileName);
  const [shape] = shapes;
  if (shape === undefined || problems.length > 0) {
    throw new EngineError('demo.shape', problems[0]?.message ?? `${fileName}: nothing in it is filled.`);
  }
  const words = shape.name.replaceAll('-', ' ');
  return {
    id: shape.name,
    name: words.charAt(0).toUpperCase() + words.slice(1),
    rings: shape.rings.map((ring) => Array.from(ring)),
    fillRule: shape.fillRule,
    widthMm: shape.widthMm,
    heightMm: shape.heightMm,
  };
}

function toPlaced([shape, xMm, yMm, turnDeg, scale]: DemoPlace, known: ReadonlySet<string>): PlacedShape {
  if (!known.has(shape)) throw new EngineError('demo.shape', `The demo needs shapes/${shape}.svg, which is missing.`);
  return { shape, xMm, yMm, turnDeg, scale };
}

function toPull([screen, ink, lay = {}]: DemoPull, i: number): Pull {
  return { id: `p${i + 1}`, screen, ink, dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1, ...lay };
}
