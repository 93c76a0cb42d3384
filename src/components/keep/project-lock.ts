const LOCK = 'pullstack-project';

/** Holds the saved project for one tab at a time; when that tab closes, the next that waits gets it. */
export class ProjectLock {
  /** @returns whether browsers guard two tabs against each other here; over plain http they do not */
  static get possible(): boolean {
    return 'locks' in navigator;
  }

  /**
   * Takes the lock, or waits for it in the background.
   * @param granted called when the lock comes later
   * @returns whether this tab has it at once; true where there are no locks
   */
  take(granted: () => void): Promise<boolean> {
    if (!ProjectLock.possible) return Promise.resolve(true);
    // Held until the tab closes.
    const forEver = new Promise<never>(() => {});
    return new Promise((resolve) => {
      const wait = (): void => {
        void navigator.locks.request(LOCK, () => {
          granted();
          return forEver;
        });
      };
      const first = navigator.locks.request(LOCK, { ifAvailable: true }, (lock) => {
        resolve(lock !== null);
        if (lock !== null) return forEver;
        wait();
        return undefined;
      });
      // Where a setting forbids locks, the app works as where there are none.
      first.catch(() => resolve(true));
    });
  }
}
