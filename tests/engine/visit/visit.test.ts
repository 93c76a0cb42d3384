import { describe, expect, it } from 'vitest';
import { demoStocks } from '../../../src/engine/ink/demo/demo-stocks.ts';
import { mixInks } from '../../../src/engine/ink/mix/mix.ts';
import { checkPlan } from '../../../src/engine/pullorder/check-plan.ts';
import { recipeOf } from '../../../src/engine/recipe/write.ts';
import { paperToCut, usualExtras } from '../../../src/engine/visit/paper-needs.ts';
import { visitProblem, type VisitRunInput } from '../../../src/engine/visit/visit-problem.ts';
import { planVisit, type PressPlan } from '../../../src/engine/visit/visit.ts';
import { choices } from '../../helpers/noise.ts';
import { pullOf, screenAt, smallProject } from '../../helpers/small-project.ts';

const project = smallProject();
const { bench, drawer, press } = project;
const first = recipeOf(project.bench, drawer, { id: 'a', title: 'First' });
const turned = recipeOf([...project.bench].reverse(), drawer, { id: 'b', title: 'Turned' });

function plan(runs: VisitRunInput[], budgetMs = 200): PressPlan {
  let last: PressPlan | null = null;
  for (const step of planVisit({ runs, minDeltaE: 1, press, seed: 'x' }, budgetMs)) last = step;
  return last!;
}

describe('visitProblem', () => {
  it('should see one frame and one bucket where two recipes mean the same', () => {
    const { registry, problem } = visitProblem(
      [
        { recipe: first, sheets: 2 },
        { recipe: turned, sheets: 1 },
      ],
      1,
    );
    expect(registry.screens.map((screen) => screen.key)).toEqual(['1', '2', '3']);
    expect(registry.inks).toHaveLength(3);
    expect(problem.sheets).toHaveLength(3);
  });

  it('should keep two frames apart that share a number but not their stencil', () => {
    const moved = structuredClone(turned);
    moved.screens.find((screen) => screen.number === 2)!.placed[0]!.xMm += 30;
    const { registry } = visitProblem(
      [
        { recipe: first, sheets: 1 },
        { recipe: moved, sheets: 1 },
      ],
      1,
    );
    expect(registry.screens.map((screen) => screen.key).sort()).toEqual(['1', '2', '2 b', '3']);
  });

  it('should print the same pull twice in two set-ups, never wet in wet', () => {
    const twice = recipeOf([pullOf('x', 's1', 'rust'), pullOf('y', 's1', 'rust')], drawer, { id: 't', title: 'Twice' });
    expect(visitProblem([{ recipe: twice, sheets: 1 }], 1).problem.sheets[0]!.overlaps).toEqual([[0, 1]]);
  });

  it('should say in a sentence that nothing is to be printed', () => {
    expect(() => visitProblem([], 1)).toThrow(/Nothing is to be printed/);
    expect(() => visitProblem([{ recipe: first, sheets: 10_000 }], 1)).toThrow(/10000 sheets/);
  });
});

describe('planVisit', () => {
  it('should print every pull of every sheet once, in an order that keeps each sheet', () => {
    const runs = [
      { recipe: first, sheets: 3 },
      { recipe: turned, sheets: 2 },
    ];
    const result = plan(runs);
    const visit = visitProblem(runs, 1);
    const setUps = result.cards.map((card) => ({
      screen: card.screen.key,
      ink: card.ink.key,
      offset: JSON.stringify([card.dxMm, card.dyMm, card.turnDeg]),
      pulls: card.states.flatMap((state) =>
        state.sheets.flatMap((sheet) => state.prints.map((pull): [number, number] => [sheet - 1, pull])),
      ),
    }));
    expect(checkPlan(visit.problem, { ...result, setUps })).toEqual([]);
    expect(result.bound.setUps).toBeLessThanOrEqual(result.cards.length);
    expect(result.done).toBe(true);
  });

  it('should end each sheet with the picture of its recipe', () => {
    const result = plan([{ recipe: first, sheets: 2 }]);
    const last = result.cards.at(-1)!.states[0]!;
    expect(last.sheets).toEqual([1, 2]);
    expect(last.after.map((pull) => pull.id).sort()).toEqual(['p1', 'p2', 'p3']);
  });

  it('should weigh ink by area, mesh and sheets', () => {
    // By hand: 200 × 100 mm on 2 sheets, their over (⌈2 × 1.12⌉ = 3) and a proof: 0.08 m². Mesh 90-48:
    // (63.11 / 111.11)² × 1.55 × 48 µm = 24.0 cm³/m²; × 0.8 transfer × 1.15 g/cm³ = 1.325 g on three
    // sheets, 0.442 g on the proof, 100 mL that stay behind = 115 g, and a tenth of it all for safety.
    const one = recipeOf([pullOf('x', 's1', 'rust')], drawer, { id: 'o', title: 'One' });
    const [need] = plan([{ recipe: one, sheets: 2, overs: 1, proofs: 1 }]).inks;
    expect(need!.areaM2).toBeCloseTo(0.08, 6);
    expect(need!.printedG).toBeCloseTo(1.325, 2);
    expect(need!.proofsG).toBeCloseTo(0.442, 2);
    expect(need!.lossG).toBeCloseTo(115, 6);
    expect(need!.safetyG).toBeCloseTo(11.677, 2);
    expect(need!.grams).toBeCloseTo(128.443, 2);
  });

  it('should leave ink in screen and bucket once an ink, however many recipes print it', () => {
    const two = ['o', 'u'].map((id) => recipeOf([pullOf('x', 's1', 'rust')], drawer, { id, title: id }));
    const [need, ...others] = plan(two.map((recipe) => ({ recipe, sheets: 1 }))).inks;
    expect(others).toEqual([]);
    // One bucket and one screen of it: 100 mL × 1.15 g/cm³.
    expect(need!.lossG).toBeCloseTo(115, 6);
  });

  it('should print within the sheet only: what hangs over an edge takes no ink', () => {
    // The demo's sheet is 560 × 760 mm. 200 × 100 mm lies half out at each side in turn, so 0.01 m² on a sheet and its proof.
    for (const [dxMm, dyMm] of [
      [-200, 0],
      [360, 0],
      [0, -200],
      [0, 560],
    ] as const) {
      const out = recipeOf([pullOf('x', 's1', 'rust', { dxMm, dyMm })], drawer, { id: 'o', title: 'Out' });
      let last: PressPlan | null = null;
      for (const step of planVisit(
        { runs: [{ recipe: out, sheets: 1, proofs: 1 }], minDeltaE: 1, press: { ...press, overs: 0 }, seed: 'x' },
        5,
      ))
        last = step;
      expect(last!.inks[0]!.areaM2).toBeCloseTo(0.02, 9);
    }
  });

  it('should take the margin and the proofs that the studio gives', () => {
    const one = recipeOf([pullOf('x', 's1', 'rust')], drawer, { id: 'o', title: 'One' });
    const given = ({ proofs, ...change }: { safety: number; proofs: number }): PressPlan => {
      let last: PressPlan | null = null;
      for (const step of planVisit(
        { runs: [{ recipe: one, sheets: 2, overs: 1, proofs }], minDeltaE: 1, press: { ...press, ...change }, seed: 'x' },
        20,
      ))
        last = step;
      return last!;
    };
    const [bare] = given({ safety: 0, proofs: 0 }).inks;
    expect(bare!.grams).toBeCloseTo(116.325, 2);
    const [much] = given({ safety: 0.5, proofs: 3 }).inks;
    expect(much!.grams).toBeCloseTo(1.5 * (2 * 1.325 + 115), 2);
    const run = { recipe: one, sheets: 10, ...usualExtras(10, { ...press, overs: 0.12, proofs: 3 }) };
    expect(paperToCut(visitProblem([run], 1).sheets)).toEqual({ good: 10, overs: 2, proofs: 3, cut: 15 });
    expect(usualExtras(1, { ...press, overs: 0.12, proofs: 3 })).toEqual({ overs: 0, proofs: 0 });
  });

  it('should split mixed inks into grams of stock ink, one bucket of each over all recipes', () => {
    const [base, lime, soot] = demoStocks();
    const inks = [
      ...drawer.inks,
      base!,
      lime!,
      soot!,
      mixInks(
        [
          { ink: base!, parts: 3 },
          { ink: soot!, parts: 1 },
        ],
        { id: 'mist', name: 'Mist' },
      ),
      mixInks(
        [
          { ink: lime!, parts: 1 },
          { ink: soot!, parts: 1 },
        ],
        { id: 'slate', name: 'Slate' },
      ),
    ];
    const mixed = { ...drawer, inks };
    const one = recipeOf([pullOf('x', 's1', 'mist'), pullOf('y', 's2', 'rust')], mixed, { id: 'm', title: 'Mist' });
    const two = recipeOf([pullOf('x', 's1', 'mist'), pullOf('y', 's2', 'slate'), pullOf('z', 's3', 'stock-soot')], mixed, {
      id: 's',
      title: 'Slate',
    });
    const result = plan([
      { recipe: one, sheets: 2 },
      { recipe: two, sheets: 1 },
    ]);
    const grams = Object.fromEntries(result.inks.map((need) => [need.name, need.grams]));
    expect(Object.keys(grams).sort()).toEqual(['Mist', 'Rust', 'Slate', 'Stack soot']);
    const stocks = Object.fromEntries(result.stocks.map((need) => [need.name, need.grams]));
    expect(stocks['Clear water']).toBeCloseTo(grams['Mist']! * 0.75, 9);
    expect(stocks['Quay lime']).toBeCloseTo(grams['Slate']! / 2, 9);
    expect(stocks['Stack soot']).toBeCloseTo(grams['Mist']! / 4 + grams['Slate']! / 2 + grams['Stack soot']!, 9);
    expect(stocks['Rust']).toBeCloseTo(grams['Rust']!, 9);
    expect(result.stocks).toHaveLength(4);
  });

  it('should take the order that keeps free swaps too where that is the better one', () => {
    // So little work is allowed that the search with free swaps ends at a worse order than the one without.
    const { uniform } = choices(12);
    const int = (below: number): number => Math.floor(uniform() * below);
    const screens = 4 + int(6);
    const frames = Array.from({ length: screens }, (_, i) => screenAt(`s${i}`, i + 1, 'wide', 120 + int(320), 120 + int(500)));
    const inks = 2 + int(6);
    const runs = Array.from({ length: 2 + int(4) }, (_, r) => {
      const pulls = Array.from({ length: 4 + int(8) }, (_, p) => pullOf(`p${p}`, `s${int(screens)}`, drawer.inks[int(inks)]!.id));
      return { recipe: recipeOf(pulls, { ...drawer, screens: frames }, { id: `r${r}`, title: `R${r}` }), sheets: 1 };
    });
    const steps = [...planVisit({ runs, minDeltaE: 1, press, seed: 'x' }, 4)];
    const [first, last] = [steps[0]!, steps.at(-1)!];
    expect(last.freeSwaps).toBeGreaterThan(0);
    expect(last.mounts).toBeLessThan(first.mounts);
    expect(last.savedMounts).toBeGreaterThanOrEqual(0);
  });

  it('should give the same order for the same seed', () => {
    const runs = [
      { recipe: first, sheets: 3 },
      { recipe: turned, sheets: 2 },
    ];
    expect(plan(runs)).toEqual(plan(runs));
  });
});

describe('a visit on the clock', () => {
  it('should call a set-up dry when its last film is, and ready to stack when that is', () => {
    const inks = drawer.inks.map((ink) => ({ ...ink, dryMinutes: 25, stackMinutes: 70 }));
    const timed = recipeOf(bench, { ...drawer, inks }, { id: 't', title: 'Timed' });
    const { times } = plan([{ recipe: timed, sheets: 2 }]);
    expect(times).toHaveLength(3);
    for (const { endMinute, dryMinute, stackMinute } of times) {
      expect([dryMinute - endMinute, stackMinute - endMinute]).toEqual([25, 70]);
    }
  });

  it('should tell when it ends and that nothing ends sooner than its bound', () => {
    for (const beds of [1, 2]) {
      let last: PressPlan | null = null;
      for (const step of planVisit(
        {
          runs: [
            { recipe: first, sheets: 4 },
            { recipe: turned, sheets: 3 },
          ],
          minDeltaE: 1,
          press: { ...press, beds },
          seed: 'x',
        },
        50,
      ))
        last = step;
      const { ends, endsAtLeast, cards, times, mounts } = last!;
      expect(endsAtLeast!.day * 1440 + endsAtLeast!.minute).toBeLessThanOrEqual(ends.day * 1440 + ends.minute);
      expect(mounts).toBe(cards.filter((card) => card.mount).length);
      expect(new Set(times.map((time) => time.bed)).size).toBe(beds);
    }
  });

  it('should say in a sentence what no visit can be laid out with', () => {
    const runs = [{ recipe: first, sheets: 3 }];
    const run =
      (change: object, of: VisitRunInput[] = runs) =>
      () => [...planVisit({ runs: of, minDeltaE: 1, press: { ...press, ...change }, seed: 'x' }, 20)];
    expect(run({ hoursPerDay: 0 })).toThrow('The length of a day is 0: give more than 0 and at most 24 hours.');
    expect(run({}, [{ recipe: first, sheets: 3, proofs: 0.5 }])).toThrow('A number of sheets, overs or proofs of First is not whole');
    expect(run({ safety: -1 })).toThrow('safety margin is -1: give 0 or more');
    expect(run({}, [{ recipe: first, sheets: 10_000 }])).toThrow(
      '10000 sheets are more than the 500 that one visit can hold; split them over visits.',
    );
    // One rack place: only one sheet can lie wet, so a set-up of three waits for each.
    const held = run({ rackPlaces: 1 })().at(-1)!;
    expect(held.problems.map(({ message }) => message).join(' ')).toMatch(
      /The racks hold 1 wet sheet, too few for set-ups 1–3: the press waits/,
    );
  });
});
