import type { Problem } from '../../../engine/base/error.ts';
import { desk } from '../../../workers/client/client.ts';
import { sameInputs, sameValue, type WallInputs } from './wall-search.ts';

/** How settings differ from those that were checked before. */
export type SettingsChange = 'none' | 'first' | 'settings' | 'stack';

/** Says of the settings what contradicts itself, whenever they change. */
export class SettingsCheck {
  /** What cannot be met of the settings last checked. */
  problems: readonly Problem[] = [];
  private checked: WallInputs | null = null;
  private call = 0;

  /** How settings differ from those last checked; with another stack, whatever else differs. */
  changeTo(inputs: WallInputs): SettingsChange {
    if (this.checked === null) return 'first';
    if (sameInputs(this.checked, inputs)) return 'none';
    const { bench } = this.checked;
    return bench.length > 0 && !sameValue(bench, inputs.bench) ? 'stack' : 'settings';
  }

  /**
   * @returns whether these are still the latest, so that something may be done with them
   * @throws what the worker throws, while these are the latest
   */
  async check(inputs: WallInputs): Promise<boolean> {
    this.checked = inputs;
    const call = ++this.call;
    const { drawer, bench, explore } = inputs;
    const worker = desk('picture');
    try {
      const problems = await worker.engine.checkExplore(worker.key(drawer), bench, explore);
      if (call !== this.call) return false;
      // The same list stays the same, so that no field is drawn anew under someone who types.
      if (!sameValue(problems, this.problems)) this.problems = problems;
      return true;
    } catch (error) {
      if (call !== this.call) return false;
      throw error;
    }
  }

  /** For another project: its settings count as the first. */
  forget(): void {
    this.checked = null;
  }
}
