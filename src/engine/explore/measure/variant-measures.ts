import type { Lab } from '../../colour/lab.ts';
import type { FilmBands } from '../../ink/film/film.ts';
import { cellLab } from '../../stack/appearance.ts';
import type { Layer } from '../../stack/layers.ts';
import type { CellMap, Pull } from '../../stack/types.ts';
import type { Studio } from '../../studio/studio.ts';
import { say } from '../../words/en/explore/measure.ts';
import type { MapFigures } from './lines/figure-room.ts';
import { mapFigures, passingFigures } from './map-figures.ts';
import { measureVariant } from './measures.ts';
import { pullSwatches } from './overprint-colours.ts';
import { needs } from './set-ups.ts';

/** What a print of a wall is like, in plain numbers that a wall is laid out and filtered by. */
export interface VariantMeasures {
  /** Share of the sheet under at least one pull, %. */
  coverage: number;
  /** Colours told apart, paper among them. */
  colours: number;
  /** Share of the sheet that the largest colour takes, %. */
  mainColour: number;
  /** Share of the sheet in overprint colours, %. */
  overprintColour: number;
  /** Darkest and lightest L, and how far they lie apart. */
  darkest: number;
  lightest: number;
  contrast: number;
  /** Edge length × ΔE00 across it ÷ sheet area, ΔE/mm. */
  edgeContrast: number;
  /** How far the centre of darkness lies from the sheet's, % of the way to a corner. */
  imbalance: number;
  pulls: number;
  /** Different screens. */
  screens: number;
  /** Different inks. */
  inks: number;
  /** What the print needs when pulled alone: see needs. */
  setUps: number;
}

/** One measure in words. */
export interface MeasureWords {
  key: keyof VariantMeasures;
  label: string;
  /** '' for counts. */
  unit: string;
  /** Digits after the point that mean something. */
  digits: number;
  /** Least and greatest of the common prints, for axes; a print may lie outside. */
  range: readonly [number, number];
  /** What it is, in a sentence, where its name does not say so. */
  help?: string;
}

/** All measures in the order in which they are offered. */
export const MEASURES: readonly MeasureWords[] = [
  { key: 'coverage', label: say.covered, unit: '%', digits: 0, range: [0, 100] },
  { key: 'colours', label: say.colours, unit: '', digits: 0, range: [1, 100] },
  { key: 'mainColour', label: say.largestColour, unit: '%', digits: 0, range: [0, 100] },
  {
    key: 'overprintColour',
    label: say.overprintColours,
    unit: '%',
    digits: 1,
    range: [0, 100],
    help: say.coloursWhereInksOverlap,
  },
  { key: 'darkest', label: say.darkest, unit: 'L', digits: 0, range: [0, 100] },
  { key: 'lightest', label: say.lightest, unit: 'L', digits: 0, range: [0, 100] },
  { key: 'contrast', label: say.lightToDark, unit: 'L', digits: 0, range: [0, 100] },
  {
    key: 'edgeContrast',
    label: say.contrastOfEdges,
    unit: 'ΔE/mm',
    digits: 2,
    range: [0, 2],
    help: say.lengthOfEdgesDeltaE00,
  },
  { key: 'imbalance', label: say.offBalance, unit: '%', digits: 1, range: [0, 50] },
  { key: 'pulls', label: say.pulls, unit: '', digits: 0, range: [1, 80] },
  { key: 'screens', label: say.screens, unit: '', digits: 0, range: [1, 80] },
  { key: 'inks', label: say.inks, unit: '', digits: 0, range: [1, 12] },
  {
    key: 'setUps',
    label: say.setUps,
    unit: '',
    digits: 0,
    range: [1, 80],
    help: say.oneScreenOnPress,
  },
];

/** Measures the prints of one studio; the swatches are found once. */
export class VariantMeter {
  private readonly paper: readonly number[];
  private readonly swatches = new Map<FilmBands | null, Lab>();
  /** The films whose swatches were listed latest, and these. */
  private films: readonly FilmBands[] = [];
  private latest: readonly Lab[] | null = null;
  private lab = new Float64Array(0);
  private figures: MapFigures | null = null;
  private mapName: string | undefined;

  constructor({ paper }: Studio) {
    this.paper = paper.reflectance;
  }

  /**
   * All measures of a print.
   * @param map of the placed screens of these pulls, and no others
   * @param layers of the pulls in that map
   * @param mapName the same as in the call before when the map is: then what it shares is known
   * @throws EngineError as cellLab
   */
  measure(map: CellMap, layers: readonly Layer[], pulls: readonly Pull[], mapName?: string): VariantMeasures {
    if (this.lab.length < map.cells * 3) this.lab = new Float64Array(map.cells * 6);
    const lab = cellLab(map, layers, this.paper, this.lab);
    const figuresOf = mapName === undefined ? passingFigures : mapFigures;
    if (this.figures === null || mapName === undefined || mapName !== this.mapName) this.figures = figuresOf(map);
    this.mapName = mapName;
    const found = measureVariant(map, lab, this.swatchesOf(layers), this.figures);
    const sheet = map.widthMm * map.heightMm;
    const [darkest, lightest] = found.lightness;
    const { setUps, screens, inks } = needs(pulls);
    return {
      coverage: found.coverage * 100,
      colours: found.colours,
      mainColour: (found.mainColourMm2 / sheet) * 100,
      overprintColour: (found.overprintColourMm2 / sheet) * 100,
      darkest,
      lightest,
      contrast: lightest - darkest,
      edgeContrast: found.edgeContrast,
      imbalance: found.imbalance * 100,
      pulls: pulls.length,
      screens,
      inks,
      setUps,
    };
  }

  private swatchesOf(layers: readonly Layer[]): readonly Lab[] {
    const { films } = this;
    const known = layers.length === films.length && layers.every(({ film }, i) => film === films[i]);
    if (this.latest !== null && known) return this.latest;
    this.films = layers.map(({ film }) => film);
    this.latest = pullSwatches(this.films, this.paper, this.swatches);
    return this.latest;
  }
}
