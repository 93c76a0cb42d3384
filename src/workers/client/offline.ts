import { Workbox } from 'workbox-window';
import { OFFLINE_FILE } from '../api/offline-api.ts';

/**
 * Has the browser keep the page, so that it opens without a network from the second visit on. Does nothing
 * where browsers refuse it (plain http from another device) or nothing is built.
 * @param newer told when a newer build is there; what it is given loads that one and the page anew
 */
export function keepOffline(newer: (load: () => void) => void): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const box = new Workbox(`./${OFFLINE_FILE}`);
  box.addEventListener('waiting', () =>
    newer(() => {
      box.addEventListener('controlling', () => location.reload());
      box.messageSkipWaiting();
    }),
  );
  // The app works without; a browser that refuses it, in a private window, has its reasons.
  box.register().catch(() => {});
}
