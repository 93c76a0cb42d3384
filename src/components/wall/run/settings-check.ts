import type { ReactiveControllerHost } from 'lit';
import type { Problem } from '../../../engine/base/error.ts';
import { engineFor } from '../../../workers/client/client.ts';
import { Work, type WorkListener } from '../../ui/work.ts';
import { sameInputs, sameValue, type WallInputs } from './wall-search.ts';

/** How settings differ from those that were checked before. */
export type SettingsChange = 'none' | 'first' | 'settings' | 'stack';

/** Says of the settings what contradicts itself, whenever they change. */
export class SettingsCheck {
  /** What cannot be met of the settings last checked. */
  problems: readonly Problem[] = [];
  private checked: WallInputs | null = null;
  private readonly checking: Work<readonly Problem[]>;

  /** @param listener hears why settings could not be checked, and that they could */
  constructor(host: ReactiveControllerHost, listener: Pick<WorkListener<unknown>, 'failed' | 'settled'>) {
    this.checking = new Work(host, listener);
  }

  /** How settings differ from those last checked; with another stack, whatever else differs. */
  changeTo(inputs: WallInputs): SettingsChange {
    if (this.checked === null) return 'first';
    if (sameInputs(this.checked, inputs)) return 'none';
    const { bench } = this.checked;
    return bench.length > 0 && !sameValue(bench, inputs.bench) ? 'stack' : 'settings';
  }

  /** @returns whether they could be checked and are still the latest, so that something may be done with them */
  async check(inputs: WallInputs): Promise<boolean> {
    this.checked = inputs;
    let latest = false;
    const { studio, bench, explore } = inputs;
    await this.checking.start(async ({ signal }) => {
      const problems = await engineFor('picture').checkExplore({ studio, bench, explore });
      if (signal.aborted) return null;
      latest = true;
      // The same list stays the same, so that no field is drawn anew under someone who types.
      if (!sameValue(problems, this.problems)) this.problems = problems;
      return problems;
    });
    return latest;
  }

  /** For another project: its settings count as the first. */
  forget(): void {
    this.checked = null;
  }
}
