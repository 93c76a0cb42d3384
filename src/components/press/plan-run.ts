import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { PressPlan, VisitInput } from '../../engine/output/visit.ts';
import type { Recipe } from '../../engine/recipe/types.ts';
import { desk, newJob, onMessage, sentenceOf } from '../../workers/client.ts';

/** Work allowed for an order, ms. */
const BUDGET_MS = 4000;
/** A large grid takes longer to draw than a step takes to think. */
const SHOW_EVERY_MS = 300;

/** A plan and what it was made from. */
export interface MadePlan {
  plan: PressPlan;
  input: VisitInput;
  /** By the index that cards and sheets use. */
  recipes: Recipe[];
}

/** Starts and stops the search for a pull order, and keeps the best that was found. */
export class PlanRun implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly tell: (sentence: string) => void;
  private job: string | null = null;
  private timer: ReturnType<typeof setTimeout> | null = null;
  private next: MadePlan | null = null;
  made: MadePlan | null = null;

  constructor(host: ReactiveControllerHost, tell: (sentence: string) => void) {
    this.host = host;
    this.tell = tell;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  get running(): boolean {
    return this.job !== null;
  }

  /** Plans anew; a search that still runs is stopped. */
  async start(input: VisitInput): Promise<void> {
    this.stop();
    const job = newJob();
    this.job = job;
    this.host.requestUpdate();
    const recipes = input.runs.filter((run) => run.sheets > 0).map((run) => run.recipe);
    try {
      const plan = await desk('plan').engine.plan(
        job,
        input,
        BUDGET_MS,
        onMessage((best: PressPlan) => {
          if (this.job === job) this.offer({ plan: best, input, recipes });
        }),
      );
      if (this.job === job) this.show({ plan, input, recipes });
    } catch (error) {
      if (this.job === job) this.tell(sentenceOf(error));
    } finally {
      if (this.job === job) this.job = null;
      this.host.requestUpdate();
    }
  }

  /** Ends the search; the best order so far stays. */
  stop(): void {
    if (this.job === null) return;
    void desk('plan').engine.cancel(this.job);
    this.job = null;
    if (this.next !== null) this.show(this.next);
    this.host.requestUpdate();
  }

  private offer(made: MadePlan): void {
    if (this.made !== null && this.made.input === made.input && gist(this.made.plan) === gist(made.plan)) return;
    this.next = made;
    if (this.made?.input !== made.input) this.show(made);
    this.timer ??= setTimeout(() => {
      if (this.next !== null) this.show(this.next);
    }, SHOW_EVERY_MS);
  }

  private show(made: MadePlan): void {
    if (this.timer !== null) clearTimeout(this.timer);
    this.timer = null;
    this.next = null;
    this.made = made;
    this.host.requestUpdate();
  }
}

/** What a reader of the plan would see change. */
function gist(plan: PressPlan): string {
  const { cards, mounts, inkChanges, registerMoves, bound, savedSetUps, done } = plan;
  return [cards.length, mounts, inkChanges, registerMoves, bound.setUps, bound.mounts, savedSetUps, done].join();
}
