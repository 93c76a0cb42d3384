import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { type SettingNoted, settingsNoted } from '../../../engine/log/settings.ts';
import type { AppStore } from '../../app-store.ts';

/** What was noted of screens in the visits that are kept in this browser, the latest first. */
export class EarlierSettings implements ReactiveController {
  private readonly host: ReactiveControllerHost;
  private readonly store: () => AppStore;
  noted: readonly SettingNoted[] = [];

  constructor(host: ReactiveControllerHost, store: () => AppStore) {
    this.host = host;
    this.store = store;
    host.addController(this);
  }

  hostConnected(): void {
    void this.read();
  }

  /** Looks anew, as after logs were brought in. What cannot be read is told where the visits are listed. */
  async read(): Promise<void> {
    const { saver } = this.store();
    try {
      const visits = (await saver.readVisits?.()) ?? [];
      const logs = await Promise.all(visits.map(async ({ id }) => (await saver.readEvents?.(id)) ?? []));
      this.noted = logs.flatMap(settingsNoted).toSorted((a, b) => b.atMs - a.atMs);
      this.host.requestUpdate();
    } catch {
      this.noted = [];
    }
  }
}
