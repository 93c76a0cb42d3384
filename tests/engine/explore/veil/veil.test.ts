import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../../src/engine/colour/delta-e.ts';
import { labD50, type Lab } from '../../../../src/engine/colour/lab.ts';
import type { VeilOptions, VeilResult } from '../../../../src/engine/explore/veil/veil-types.ts';
import { veils, veilSteps } from '../../../../src/engine/explore/veil/veil.ts';
import { CARD_BLACK, CARD_WHITE } from '../../../../src/engine/ink/characterise/card.ts';
import { demoInks } from '../../../../src/engine/ink/demo/demo-inks.ts';
import { demoStocks } from '../../../../src/engine/ink/demo/demo-stocks.ts';
import { stackReflectance } from '../../../../src/engine/ink/film/film.ts';
import { letDown } from '../../../../src/engine/ink/mix/mix.ts';
import type { Ink } from '../../../../src/engine/ink/types.ts';
import type { Pull } from '../../../../src/engine/stack/types.ts';
import type { Studio } from '../../../../src/engine/studio/studio.ts';
import { pull, rectDrawer } from '../../order/drawer.ts';

type Rect = readonly [number, number, number, number];

const [WIDTH, HEIGHT] = [200, 100];
const base = demoStocks()[0]!;
const RECTS: Rect[] = [
  [10, 10, 90, 70],
  [60, 30, 100, 60],
  [120, 10, 60, 50],
  [0, 40, 200, 60],
  [30, 0, 140, 100],
];
// Screens 3 and 4 are left to veil with; the printable part is less than the sheet.
const PRINTABLE: Rect = [4, 6, 190, 88];
const drawer: Studio = (() => {
  const plain = rectDrawer(RECTS);
  const [xMm, yMm, widthMm, heightMm] = PRINTABLE;
  // The mesh that the inks' curves hold for, so that a film is a stroke's.
  const screens = plain.screens.map((screen) => ({ ...screen, mesh: { threadsPerCm: 90, threadUm: 48 } }));
  return { ...plain, screens, inks: [...demoInks(), base], paper: { ...plain.paper, printable: { xMm, yMm, widthMm, heightMm } } };
})();
const PULLS = [pull(0, 'rust'), pull(1, 'dusk'), pull(2, 'signal')];

function run(options: VeilOptions = {}, stack: Pull[] = PULLS, from = drawer): VeilResult {
  const steps = veils({ pulls: stack }, from, { rows: 100, ...options });
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** A print as pixels of 1 mm, each from the films of the rectangles that it lies in. */
function pixels(layers: readonly { rect: Rect; ink: Ink }[]): Lab[] {
  const known = new Map<string, Lab>();
  return Array.from({ length: WIDTH * HEIGHT }, (_, i) => {
    const [x, y] = [(i % WIDTH) + 0.5, Math.floor(i / WIDTH) + 0.5];
    const over = layers.map(({ rect: [rx, ry, w, h] }) => x > rx && x < rx + w && y > ry && y < ry + h);
    const key = over.join();
    let lab = known.get(key);
    if (lab === undefined) {
      lab = labD50(
        stackReflectance(
          layers.filter((_, k) => over[k]).map(({ ink }) => ink),
          drawer.paper.reflectance,
        ),
      );
      known.set(key, lab);
    }
    return lab;
  });
}

/** Contrast of edges by counting: ΔE00 across each millimetre between two pixels, over the sheet. */
function edgeContrast(print: readonly Lab[]): number {
  let sum = 0;
  const add = (a: Lab, b: Lab): void => {
    if (a !== b) sum += deltaE2000(a, b);
  };
  for (let y = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++) {
      const at = y * WIDTH + x;
      if (x + 1 < WIDTH) add(print[at]!, print[at + 1]!);
      if (y + 1 < HEIGHT) add(print[at]!, print[at + WIDTH]!);
    }
  }
  return sum / (WIDTH * HEIGHT);
}

/** Whether the six largest colours keep their order of L, by counting. */
function keepsOrder(before: readonly Lab[], after: readonly Lab[]): boolean {
  const areas = new Map<Lab, number[]>();
  before.forEach((lab, i) => void (areas.get(lab)?.push(i) ?? areas.set(lab, [i])));
  const large = [...areas].sort((a, b) => b[1].length - a[1].length).slice(0, 6);
  const mean = (at: readonly number[]): number => at.reduce((sum, i) => sum + after[i]![0], 0) / at.length;
  return large.every(([lab, at]) => large.every(([other, there]) => lab[0] - other[0] < 2 || mean(at) - mean(there) >= 1));
}

function layersOf(pulls: readonly Pull[], inks: readonly Ink[]): { rect: Rect; ink: Ink }[] {
  return pulls.map((each) => ({
    rect: RECTS[Number(each.screen.slice(1))] ?? PRINTABLE,
    ink: inks.find(({ id }) => id === each.ink)!,
  }));
}

const before = pixels(layersOf(PULLS, drawer.inks));

describe('veils', () => {
  const result = run();

  it('should measure the print with and without each veil as counted pixels do', () => {
    expect(result.before.edgeContrast).toBeCloseTo(edgeContrast(before), 6);
    expect(result.proposals.length).toBeGreaterThan(3);
    for (const { pulls, newInks, after, softens } of result.proposals) {
      const print = pixels(layersOf(pulls, [...drawer.inks, ...newInks]));
      expect(after.edgeContrast).toBeCloseTo(edgeContrast(print), 6);
      expect(softens).toBeCloseTo(1 - edgeContrast(print) / edgeContrast(before), 6);
      expect(softens).toBeGreaterThan(0.009);
      expect(keepsOrder(before, print)).toBe(true);
    }
  });

  it('should put the softest veil of all first, which a plain search finds as well', () => {
    const card = (ink: Ink, ground: readonly number[]): number => labD50(stackReflectance([ink], ground))[0];
    const gap = labD50(CARD_WHITE)[0] - labD50(CARD_BLACK)[0];
    let least = Infinity;
    let kept = 0;
    for (const rect of [...RECTS, PRINTABLE]) {
      for (const ink of demoInks().flatMap((each) => [each, ...[2, 6, 15].map((parts) => letDown(each, base, parts))])) {
        if (card(ink, CARD_WHITE) - card(ink, CARD_BLACK) < 0.35 * gap) continue;
        const print = pixels([...layersOf(PULLS, drawer.inks), { rect, ink }]);
        const edges = edgeContrast(print);
        if (!keepsOrder(before, print) || edges > 0.99 * edgeContrast(before)) continue;
        kept++;
        least = Math.min(least, edges);
      }
    }
    expect(result.kept).toBe(kept);
    expect(result.proposals[0]!.after.edgeContrast).toBeCloseTo(least, 6);
  });

  it('should give stacks ready for the Bench, with what the drawer lacks', () => {
    for (const { pulls, veil, at, ink, from, parts, newInks, newShape, newScreen } of result.proposals) {
      expect(pulls.filter((each) => each !== veil)).toEqual(PULLS);
      expect([at, pulls[at]]).toEqual([3, veil]);
      expect([...drawer.inks, ...newInks].some((each) => each.id === ink.id)).toBe(true);
      if (parts > 0)
        expect(ink.mix).toEqual([
          { ink: from, parts: 1 },
          { ink: base.id, parts },
        ]);
      expect([...drawer.screens, newScreen].some((screen) => screen?.id === veil.screen)).toBe(true);
      if (newScreen !== null) expect([newScreen.placed[0]!.shape, newScreen.number]).toEqual([newShape!.id, 6]);
    }
    expect(result.proposals.some(({ newScreen }) => newScreen !== null)).toBe(true);
  });

  it('should propose pictures that differ, softest first, the same at every run', () => {
    const prints = result.proposals.map(({ pulls, newInks }) => pixels(layersOf(pulls, [...drawer.inks, ...newInks])));
    for (const [i, a] of prints.entries()) {
      for (const b of prints.slice(i + 1)) {
        const mean = a.reduce((sum, lab, k) => sum + (lab === b[k] ? 0 : deltaE2000(lab, b[k]!)), 0) / a.length;
        expect(mean).toBeGreaterThan(0.4);
      }
    }
    const found = result.proposals.map(({ after }) => after.edgeContrast);
    expect(found).toEqual([...found].sort((a, b) => a - b));
    expect(run()).toEqual(result);
  });

  it('should find at least as soft a veil at any place, and measure it there', () => {
    const any = run({ places: 'any', inks: ['foam', 'dusk'], letdowns: [0, 3] });
    const end = run({ inks: ['foam', 'dusk'], letdowns: [0, 3] });
    expect(any.proposals[0]!.after.edgeContrast).toBeLessThanOrEqual(end.proposals[0]!.after.edgeContrast + 1e-12);
    for (const { pulls, veil, at, newInks, after } of any.proposals) {
      expect(pulls[at]).toBe(veil);
      expect(after.edgeContrast).toBeCloseTo(edgeContrast(pixels(layersOf(pulls, [...drawer.inks, ...newInks]))), 6);
    }
  });

  it('should bring the base along when the drawer has none', () => {
    const bare = { ...drawer, inks: demoInks() };
    expect(run({}, PULLS, bare).proposals.every(({ parts }) => parts === 0)).toBe(true);
    const { proposals } = run({ base }, PULLS, bare);
    for (const { parts, newInks, ink } of proposals) expect(newInks).toEqual(parts > 0 ? [base, ink] : []);
    expect(proposals.some(({ parts }) => parts > 0)).toBe(true);
  });

  it('should go on in steps that say how far they are', () => {
    const shares = [...veils({ pulls: PULLS }, drawer, { rows: 20 })];
    expect(shares.length).toBeGreaterThan(30);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)!).toBeLessThanOrEqual(1);
  });

  it('should refuse what it cannot veil', () => {
    expect(() => run({}, [])).toThrow('no pulls');
    expect(() => run({ inks: ['ghost'] })).toThrow("ink 'ghost'");
    expect(() => run({ screens: ['ghost'] })).toThrow("screen 'ghost'");
    expect(() => run({ letdowns: [-1] })).toThrow('1 to -1');
    expect(() => run({ count: 0 })).toThrow('number of proposals is 0');
  });
});

describe('veilSteps', () => {
  it('should know veils of use long before the end, and flood the sheet only after all other areas', () => {
    const steps = veilSteps({ pulls: PULLS }, drawer, { rows: 60 });
    const whole: boolean[] = [];
    let early: VeilResult | null = null;
    let step = steps.next();
    for (; !step.done; step = steps.next()) {
      const { share, best } = step.value;
      const { proposals } = best();
      whole.push(proposals.some(({ newScreen }) => newScreen !== null));
      if (early === null && share > 0.5) early = best();
    }
    expect(early!.proposals.length).toBeGreaterThan(2);
    for (const proposal of early!.proposals) expect(proposal.softens).toBeGreaterThan(0.009);
    // The whole area is the last of six, so nothing of it is told before five sixths are tried.
    expect(whole.indexOf(true)).toBeGreaterThan(whole.length * 0.8);
    expect(step.value).toEqual(run({ rows: 60 }));
  });

  it('should measure a veil over a screen that lies at rest in the stack as on a map of its own', () => {
    const twin = { ...drawer, screens: [...drawer.screens, { ...drawer.screens[0]!, id: 'twin', number: 9 }] };
    const [at, own] = ['s0', 'twin'].map((screen) => run({ screens: [screen], whole: false }, PULLS, twin));
    expect(at).toMatchObject({ tried: own!.tried, kept: own!.kept });
    expect(at!.proposals.length).toBeGreaterThan(0);
    at!.proposals.forEach(({ ink, softens }, i) => {
      expect(ink.id).toBe(own!.proposals[i]!.ink.id);
      expect(softens).toBeCloseTo(own!.proposals[i]!.softens, 9);
    });
  });
});
