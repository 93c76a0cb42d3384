import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { RestInput } from '../../../engine/log/rest.ts';
import type { VisitInput } from '../../../engine/visit/visit.ts';
import type { PlanProgress } from '../../../workers/api/plan-api.ts';
import { engineFor } from '../../../workers/client/client.ts';
import type { Notice } from '../../app-store.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import { Work } from '../../ui/work.ts';
import { say } from '../../words/en/press/plan.ts';

/** Work allowed for an order, ms of a common machine: every machine does all of it, unless it is stopped and gone on with. */
const BUDGET_MS = 1500;
/** A large grid takes longer to draw than a step takes to think. */
const SHOW_EVERY_MS = 300;

/** Starts and stops the search for a pull order, and keeps the best that was found. */
export class PlanRun implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly work: Work<MadePlan>;
  private timer: ReturnType<typeof setTimeout> | null = null;
  private next: MadePlan | null = null;
  /** Share of the work that is done, 0–1. */
  worked = 0;
  /** Share of the pulls that are looked at for which of them meet, which comes before the search, 0–1. */
  measured = 0;
  made: MadePlan | null = null;
  /** True when the search for the order that is shown was ended by hand. */
  stopped = false;

  /** @param listener hears why no order could be found, with what can be done about it, and that one could */
  constructor(host: ReactiveControllerHost, listener: { failed(sentence: string, action?: Notice['action']): void; settled(): void }) {
    this.host = host;
    this.work = new Work(null, {
      found: (made) => this.show(made),
      settled: () => listener.settled(),
      failed: (sentence) => {
        const { again } = this.work;
        listener.failed(sentence, again === null ? undefined : { label: say.findItAgain, act: again });
      },
    });
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  get running(): boolean {
    return this.work.running;
  }

  /** Shows a plan that was made before; null shows none. */
  put(made: MadePlan | null): void {
    this.stop();
    this.stopped = false;
    this.made = made;
    this.host.requestUpdate();
  }

  /** Plans anew, or what is left of a visit; a search that still runs is stopped. */
  async start(input: VisitInput | RestInput): Promise<void> {
    this.stop();
    this.stopped = false;
    this.worked = 0;
    this.measured = 0;
    this.host.requestUpdate();
    const recipes = 'rest' in input ? [...input.rest.recipes] : input.runs.filter((run) => run.sheets > 0).map((run) => run.recipe);
    await this.work.start(async ({ signal }) => {
      const onProgress = ({ plan, worked, measured }: PlanProgress): void => {
        this.tell(worked, measured);
        if (plan !== null) this.offer({ plan, input, recipes });
      };
      const plan = await engineFor('plan').plan({ input, budgetMs: BUDGET_MS }, { signal, onProgress });
      return { plan, input, recipes };
    });
    this.host.requestUpdate();
  }

  /** Ends the search; the best order so far stays. */
  stop(): void {
    if (!this.running) return;
    this.work.stop();
    this.stopped = true;
    if (this.next !== null) this.show(this.next);
    this.host.requestUpdate();
  }

  private tell(...shares: [worked: number, measured: number]): void {
    // Each step is drawn, with the grid of an order that is shown meanwhile.
    const [worked, measured] = shares.map((share) => Math.floor(20 * share) / 20) as typeof shares;
    if (worked === this.worked && measured === this.measured) return;
    this.worked = worked;
    this.measured = measured;
    this.host.requestUpdate();
  }

  private offer(made: MadePlan): void {
    this.next = made;
    if (this.made?.input !== made.input) this.show(made);
    this.timer ??= setTimeout(() => {
      this.timer = null;
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
