import { deltaE2000At } from '../../colour/delta-e.ts';
import type { Lab } from '../../colour/lab.ts';
import { cellLab } from '../../stack/appearance.ts';
import { buildCellMap } from '../../stack/cell-map.ts';
import { laidPiles } from '../../stack/films/laid-piles.ts';
import { stackLayers } from '../../stack/layers.ts';
import { placedSpans } from '../../stack/screen-spans.ts';
import type { CellMap, Pull, RowGrid, Stack } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { pointCells } from '../look/points.ts';
import { SAME_COLOUR_DELTA_E, colourAreas } from '../measure/colour-areas.ts';
import type { MapFigures } from '../measure/lines/figure-room.ts';
import { mapFigures } from '../measure/map-figures.ts';
import { measureVariant, type Measures } from '../measure/measures.ts';
import { pullSwatches } from '../measure/overprint-colours.ts';
import { freeId, type VeilArea } from './veil-areas.ts';
import { Ground, type StackMap } from './veil-ground.ts';
import type { VeilInk } from './veil-inks.ts';

/** What covers so much of the printable part is a flood. */
const FLOOD_SHARE = 0.9;

/** What veils are tried with. */
interface Trial {
  studio: Studio;
  inks: readonly VeilInk[];
  grid: RowGrid;
  /** So many of the largest colours keep their order. */
  largest: number;
}

/** The print that veils are tried on. */
export class BarePrint {
  /** What it is like without a veil. */
  readonly before: Measures;
  private readonly stack: Stack;
  private readonly trial: Trial;
  private readonly own: StackMap;
  private latest: Ground | null = null;

  /** @throws what stackLayers and placedSpans throw */
  constructor(stack: Stack, trial: Trial) {
    this.stack = stack;
    this.trial = trial;
    const { studio, grid, largest } = trial;
    const map = buildCellMap(placedSpans(stack, studio, grid), grid);
    const lab = cellLab(map, stackLayers(stack, studio), studio.paper.reflectance);
    const figures = mapFigures(map);
    this.before = measureVariant(map, lab, swatchesOf(stack, studio), figures);
    this.own = this.partsOf(map, { studio, mapStack: stack, figures, colours: colourAreas(map, lab, figures.bySize).slice(0, largest) });
  }

  private partsOf(
    map: CellMap,
    { studio, mapStack, ...known }: { studio: Studio; mapStack: Stack; colours: StackMap['colours']; figures?: MapFigures },
  ): StackMap {
    const paper = studio.paper.reflectance;
    const layers = stackLayers(this.stack, studio, mapStack);
    const lab = cellLab(map, layers, paper);
    const { colours, figures = mapFigures(map) } = known;
    const labs = colours.map((colour) => Float64Array.from(colour.lab));
    const colourOf = Int32Array.from({ length: map.cells }, (_, cell) =>
      labs.findIndex((colour) => deltaE2000At(lab, cell * 3, colour, 0) <= SAME_COLOUR_DELTA_E),
    );
    return { map, figures, layers, paper, lab, piles: laidPiles(map, layers, paper), colours, colourOf, points: pointCells(map) };
  }

  /** The studio with what an area and the inks add to it. */
  extended({ screen, newShape }: VeilArea): Studio {
    const { studio, inks } = this.trial;
    return {
      ...studio,
      shapes: newShape === null ? studio.shapes : [...studio.shapes, newShape],
      screens: studio.screens.includes(screen) ? studio.screens : [...studio.screens, screen],
      inks: [...studio.inks, ...inks.flatMap(({ newInks }) => newInks)],
    };
  }

  /** A veil over an area, at rest, in an ink. */
  veil({ screen }: VeilArea, ink: string): Pull {
    return { id: freeId('veil', this.stack.pulls), screen: screen.id, ink, dxMm: 0, dyMm: 0, turnDeg: 0, strokes: 1 };
  }

  /** An area with what lies below a veil there; the last one is kept. */
  ground(area: VeilArea): Ground {
    if (this.latest?.area === area) return this.latest;
    const { grid, inks } = this.trial;
    const { studio: printed } = this.trial;
    // A screen that is pulled at rest covers in the print's own map what its veil would.
    const pulled = this.pulledAtRest(area);
    if (pulled >= 0) return (this.latest = new Ground(area, this.own, { bit: pulled, printed }));
    const studio = this.extended(area);
    const mapStack = { pulls: [...this.stack.pulls, this.veil(area, inks[0]?.ink.id ?? '')] };
    const map = buildCellMap(placedSpans(mapStack, studio, grid), grid);
    const parts = this.partsOf(map, { studio, mapStack, colours: this.own.colours });
    return (this.latest = new Ground(area, parts, { bit: this.stack.pulls.length, printed }));
  }

  private pulledAtRest({ screen, newShape }: VeilArea): number {
    if (newShape !== null) return -1;
    return this.stack.pulls.findIndex((pull) => pull.screen === screen.id && pull.dxMm === 0 && pull.dyMm === 0 && pull.turnDeg === 0);
  }

  /** Areas in the order in which they are worth trying: where most contrast lies first, floods of the sheet last. */
  mostFirst(areas: readonly VeilArea[]): VeilArea[] {
    const worth = new Map(
      areas.map((area) => {
        if (this.pulledAtRest(area) < 0) return [area, area.newShape === null ? 0 : -1];
        const ground = this.ground(area);
        return [area, this.floods(ground) ? -1 : ground.reach];
      }),
    );
    return areas.toSorted((a, b) => (worth.get(b) ?? 0) - (worth.get(a) ?? 0));
  }

  /** Whether a veil there covers about all that can be printed. */
  private floods(ground: Ground): boolean {
    const { widthMm, heightMm } = this.trial.studio.paper.printable;
    return ground.share(widthMm * heightMm) >= FLOOD_SHARE;
  }
}

/** Lab of the paper and of each pull alone on it. */
export function swatchesOf(stack: Stack, studio: Studio): Lab[] {
  return pullSwatches(
    stackLayers(stack, studio).map(({ film }) => film),
    studio.paper.reflectance,
  );
}
