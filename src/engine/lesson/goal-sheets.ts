import { LESSON_AREA_MM2 } from '../base/limits.ts';
import { demoInks } from '../ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../ink/demo/demo-paper.ts';
import { INK_MESH } from '../ink/film/film-factor.ts';
import type { Screen, Shape } from '../shapes/types.ts';
import type { GoalKind } from './goal-kinds.ts';
import type { InkChange, LessonSheet } from './lesson-sheet.ts';

/** Name of the screen, its shape, the shape's centre on the sheet in mm, the invented ink, and how opaque it is. */
type Place = readonly [name: string, shape: string, xMm: number, yMm: number, ink: string, opacity?: number];

/** Sheets on which each goal is open at first, and can be reached. */
const PLACES: Readonly<Record<GoalKind, readonly Place[]>> = {
  'on-top': [
    ['Disc', 'disc', 230, 300, 'rust'],
    ['Square', 'square', 340, 400, 'weed'],
    ['Bar', 'bar', 280, 440, 'foam'],
  ],
  alike: [
    ['Disc', 'disc', 190, 300, 'rust'],
    ['Square', 'square', 290, 420, 'shoal'],
    ['Bar', 'bar', 340, 620, 'tar'],
  ],
  'three-pictures': [
    ['Disc', 'disc', 280, 380, 'shoal', 1],
    ['Left square', 'tile', 250, 400, 'clay', 1],
    ['Right square', 'tile', 310, 360, 'rust', 1],
  ],
  'one-picture': [
    ['Disc', 'disc', 220, 300, 'rust'],
    ['Square', 'square', 330, 330, 'shoal'],
    ['Bar', 'bar', 280, 430, 'foam'],
    ['Ring', 'ring', 290, 500, 'weed'],
  ],
  'overprint-made': [
    ['Disc', 'disc', 230, 320, 'shoal', 1],
    ['Square', 'square', 340, 430, 'signal', 1],
  ],
  'overprint-avoided': [
    ['Disc', 'disc', 230, 320, 'shoal', -1],
    ['Square', 'square', 340, 430, 'signal', -1],
    ['Bar', 'bar', 270, 520, 'dusk'],
  ],
  'less-contrast': [
    ['Disc', 'disc', 270, 380, 'clay', 0.8],
    ['Square', 'square', 300, 400, 'rust', 0.8],
    ['Bar', 'bar', 280, 330, 'tar', 0.6],
    ['Ring', 'ring', 290, 400, 'foam', 0.6],
  ],
  'found-back': [
    ['Disc', 'disc', 220, 300, 'rust'],
    ['Square', 'square', 330, 350, 'shoal'],
    ['Bar', 'bar', 270, 470, 'foam'],
    ['Ring', 'ring', 300, 480, 'clay'],
  ],
};

/**
 * The sheet that a goal is given on where a lesson brings none of its own: plain shapes in invented inks.
 * @returns the same value each time
 */
export function goalSheet(kind: GoalKind): LessonSheet {
  let made = sheets.get(kind);
  if (made === undefined) sheets.set(kind, (made = { ...sheetOf(PLACES[kind]), limits: limitsOf(kind) }));
  return made;
}

const sheets = new Map<GoalKind, LessonSheet>();
const INKS = demoInks();

/** Two shapes laid over each other by hand are half a millimetre off. */
const HAND_MM2 = 400;

function limitsOf(kind: GoalKind): LessonSheet['limits'] {
  return { minDeltaE: 1, minAreaMm2: kind === 'three-pictures' ? HAND_MM2 : LESSON_AREA_MM2.usual };
}

function sheetOf(places: readonly Place[]): Omit<LessonSheet, 'limits'> {
  const screens = places.map(([name, shape, xMm, yMm], i): Screen => ({
    id: `s${i + 1}`,
    number: i + 1,
    name,
    placed: [{ shape, xMm, yMm, turnDeg: shape === 'bar' ? -12 : 0, scale: 1 }],
    mesh: INK_MESH,
  }));
  const inks = places.flatMap(([, , , , ink, opacity = 0]): InkChange[] => (opacity === 0 ? [] : [{ ink, opacity }]));
  return {
    title: '',
    studio: { shapes: SHAPES, screens, inks: INKS, paper: DEMO_PAPER, strokeGain: 0.4 },
    pulls: places.map(([, , , , ink], i) => ({ id: `p${i + 1}`, screen: `s${i + 1}`, ink, dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 })),
    inks,
  };
}

/** Corners of a drawn circle: its sides stray from the round by less than 0.2 mm. */
const CORNERS = 96;

function circle(radiusMm: number): number[] {
  return Array.from({ length: 2 * CORNERS }, (_, i) => {
    const angle = (Math.PI * 2 * Math.floor(i / 2)) / CORNERS;
    return radiusMm * (i % 2 === 0 ? Math.cos(angle) : Math.sin(angle));
  });
}

function box(widthMm: number, heightMm: number): number[] {
  const [x, y] = [widthMm / 2, heightMm / 2];
  return [-x, -y, x, -y, x, y, -x, y];
}

const SHAPES: readonly Shape[] = [
  { id: 'disc', name: 'Disc', rings: [circle(125)], fillRule: 'nonzero', widthMm: 250, heightMm: 250 },
  { id: 'square', name: 'Square', rings: [box(210, 210)], fillRule: 'nonzero', widthMm: 210, heightMm: 210 },
  { id: 'tile', name: 'Tile', rings: [box(110, 110)], fillRule: 'nonzero', widthMm: 110, heightMm: 110 },
  { id: 'bar', name: 'Bar', rings: [box(380, 90)], fillRule: 'nonzero', widthMm: 380, heightMm: 90 },
  { id: 'ring', name: 'Ring', rings: [circle(120), circle(70)], fillRule: 'evenodd', widthMm: 240, heightMm: 240 },
];
