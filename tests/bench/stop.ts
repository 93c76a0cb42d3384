import { labD50 } from '../../src/engine/colour/lab.ts';
import { createExplorer } from '../../src/engine/explore/search/explorer.ts';
import { countOrders } from '../../src/engine/explore/search/order-count.ts';
import { veils } from '../../src/engine/explore/veil/veil.ts';
import { demoInks } from '../../src/engine/ink/demo/demo-inks.ts';
import { DEMO_PAPER } from '../../src/engine/ink/demo/demo-paper.ts';
import { stackReflectance } from '../../src/engine/ink/film/film.ts';
import { fitOverprintSteps, type PulledSquare } from '../../src/engine/ink/fit/fit-overprints.ts';
import { matchInkSteps } from '../../src/engine/ink/mix/match.ts';
import { groupOrderSteps } from '../../src/engine/order/groups/group-orders.ts';
import { recipeOf } from '../../src/engine/recipe/write.ts';
import { planVisit, type VisitInput } from '../../src/engine/visit/visit.ts';
import { StudioPictures } from '../../src/workers/jobs/pictures.ts';
import { WallPainter } from '../../src/workers/jobs/wall-painter.ts';
import { smallProject } from '../helpers/small-project.ts';
import { thumbnailCase } from './thumbnail-cases.ts';

// What is timed: how long a worker cannot hear a stop, that is the longest step of each long job on a stack
// of 80 pulls; processor time, so that other work on the machine counts for neither. What would take longer
// than a tenth of a second is ended with its worker (workers/client/desk-job.ts).

const PULLS = 80;
const MOST_MS = 20_000;

function now(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Takes steps and tells how long the longest took. */
function told<T, R>(name: string, begin: () => Iterator<T, R>): void {
  const start = now();
  let [longest, steps, before] = [0, 0, start];
  const inner = begin();
  const step = (): boolean => {
    const { done } = inner.next();
    const at = now();
    longest = Math.max(longest, at - before);
    before = at;
    steps++;
    return done === true || at - start > MOST_MS;
  };
  while (!step());
  console.log(
    `${name.padEnd(44)} ${longest.toFixed(0).padStart(6)} ms longest of ${steps} steps, ${((now() - start) / 1000).toFixed(1)} s in all`,
  );
}

const { drawer, base, reorders } = thumbnailCase('stop', PULLS, 4, [50, 140]);
const small = smallProject();
const explore = { ...small.explore, count: 40, palette: drawer.inks.map(({ id }) => id), offsetRangeMm: 4, leaveOut: 4, holds: [] };
const input = { drawer, bench: base.pulls, explore };

told('exploring, a draw and its painting', function* () {
  const explorer = createExplorer(input);
  const painter = new WallPainter(new StudioPictures(drawer), { rows: 256, relative: true });
  while (!explorer.done) yield explorer.step(1).map(({ pulls }) => painter.tile(pulls));
});
told('counting orders', () => countOrders(input));
told('a veil', () => veils(base, drawer));
told('orders of a lesson', () =>
  groupOrderSteps({ pulls: base.pulls.slice(0, 6) }, drawer, { toleranceMm: 0.05, minDeltaE: 1, minAreaMm2: 0 }),
);

const inks = demoInks();
told('matching a colour', () => matchInkSteps([48, 22, -31], inks));
const squares = inks.slice(0, 6).flatMap(({ id: first }) =>
  [null, ...inks.slice(0, 6).map(({ id }) => id)].map((over): PulledSquare => {
    const films = [first, ...(over === null ? [] : [over])].map((id) => inks.find((ink) => ink.id === id)!);
    const bent = films.map((ink) => ({ ...ink, kx: ink.kx.map((k, band) => 1.3 * k * (1 + 0.3 * Math.sin(band / 3))) }));
    return { first, over, lab: labD50(stackReflectance(bent, DEMO_PAPER.reflectance)) };
  }),
);
told('fitting overprints', () => fitOverprintSteps(squares, inks, DEMO_PAPER));

const recipes = reorders.map(({ pulls }, at) => recipeOf(pulls, drawer, { id: `r${at}`, title: `Recipe ${at + 1}` }));
const visit: VisitInput = { runs: recipes.map((recipe) => ({ recipe, sheets: 5 })), minDeltaE: 1, press: small.press, seed: 'stop' };
told('planning four recipes', () => planVisit(visit, 1500));
