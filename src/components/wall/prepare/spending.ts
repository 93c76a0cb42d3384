import {
  filmAreas,
  limitsOf,
  limitsToChooseBy,
  newWithin,
  type PrepareBudget,
  type PrepareBy,
  type PrepareLimit,
} from '../../../engine/explore/prepare/budget.ts';
import type { PrepareStep } from '../../../engine/explore/prepare/prepare.ts';
import type { Studio } from '../../../engine/studio/studio.ts';

/** Limits as a text, to tell whether others are asked for. */
function limitsText(limits: readonly PrepareLimit[]): string {
  return JSON.stringify(limits.map(({ beyond = new Map<string, number>(), ...limit }) => [limit, [...beyond]]));
}

/** What may be spent on the screens of a studio, and what each takes of it. */
export class Spending {
  private readonly studio: Studio;
  readonly budget: PrepareBudget;
  /** Film positives of the screens, m² by id. */
  readonly films: ReadonlyMap<string, number>;
  private readonly limits: readonly PrepareLimit[];

  /** @throws EngineError 'screen.unknown-shape' */
  constructor(studio: Studio, budget: PrepareBudget) {
    this.studio = studio;
    this.budget = budget;
    this.films = filmAreas(studio, budget);
    this.limits = limitsOf(budget, this.films);
  }

  /** Whether this is what may be spent of them. */
  isOf(studio: Studio, budget: PrepareBudget): boolean {
    return this.studio === studio && this.budget === budget;
  }

  /** Whether anything is limited at all. */
  get limited(): boolean {
    return this.limits.length > 0;
  }

  /** What the search has to keep to. */
  chooseBy(by: PrepareBy): PrepareLimit[] {
    return limitsToChooseBy(this.limits, by);
  }

  /** Whether the search has to keep to the same as with another budget. */
  asksAs(other: Spending, by: PrepareBy): boolean {
    return limitsText(this.chooseBy(by)) === limitsText(other.chooseBy(by));
  }

  /** How many new ones are allowed where all take alike; Infinity where the search keeps to it. */
  allowed(by: PrepareBy): number {
    return by === 'both' ? Infinity : newWithin(this.limits, by);
  }

  /**
   * The number to begin at: where something is said of what may be spent, the least that prints all it buys;
   * else the one that was wished, or half of the prints.
   * @param most the last number that is allowed
   * @param all weight of all prints
   */
  startOf(steps: readonly PrepareStep[], { most, all, wished }: { most: number; all: number; wished: number | null }): number {
    const reaches = (weight: number): number => {
      const at = steps.findIndex(({ printed }) => printed >= weight - 1e-9);
      return at < 0 ? most : Math.min(at, most);
    };
    return this.limited ? reaches(steps[most]?.printed ?? 0) : Math.min(wished ?? reaches(all / 2), most);
  }
}
