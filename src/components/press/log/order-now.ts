import { inTheirPlaces } from '../../../engine/log/now/in-its-place.ts';
import { retimed, type RetimedPlan } from '../../../engine/log/now/retimed.ts';
import { type SettingNoted, settingsNoted } from '../../../engine/log/settings.ts';
import { visitNow } from '../../../engine/log/visit-now.ts';
import type { VisitFigures } from '../../../engine/visit/visit-figures.ts';
import type { PressPlan } from '../../../engine/visit/visit.ts';
import type { MadePlan } from '../../output/made-plan.ts';
import type { LogKeeper } from '../../ui/log/log-keeper.ts';
import { localTime } from './local-time.ts';

/** An order as the log has it by now, worked out anew only when something changed. */
export class OrderNow {
  private placed: { of: MadePlan; log: readonly unknown[]; made: MadePlan } | null = null;
  private clocked: { key: readonly unknown[]; plan: RetimedPlan } | null = null;

  /**
   * The order as it is worked: overs of other recipes go the way of the sheets whose places they took, and
   * what was noted of screens goes with it.
   * @param earlier what was noted in earlier visits
   */
  made(of: MadePlan, { sheets, events }: LogKeeper, earlier: readonly SettingNoted[]): MadePlan {
    const log = [sheets, events, earlier];
    if (this.placed?.of !== of || log.some((each, i) => each !== this.placed?.log[i])) {
      const plan = inTheirPlaces(of.plan, sheets);
      const settings = [...settingsNoted(events), ...earlier];
      this.placed = { of, log, made: plan === of.plan && settings.length === 0 ? of : { ...of, plan, settings } };
    }
    return this.placed.made;
  }

  /** The order on the clock of what was really ticked, each minute anew; null before the first tick. */
  now(plan: PressPlan, log: LogKeeper, press: VisitFigures): RetimedPlan | null {
    const nowMs = Date.now();
    const key = [plan, log.sheets, log.test, press, Math.floor(nowMs / 60_000)];
    if (this.clocked !== null && key.every((each, i) => each === this.clocked?.key[i])) return this.clocked.plan;
    const momentOf = (ms: number) => visitNow(log, ms, localTime);
    const { sheets, recipes, test, touching } = log;
    const found = retimed({ plan, sheets, recipes, test, touching, press, now: momentOf(nowMs), momentOf });
    // While it is not known what touches, it is asked again as soon as it is.
    if (found !== null) this.clocked = { key, plan: found };
    return found;
  }
}
