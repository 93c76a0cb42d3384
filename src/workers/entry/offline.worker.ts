import { cleanupOutdatedCaches, precacheAndRoute, type PrecacheEntry } from 'workbox-precaching';

/** The page that opens without a network: the browser keeps every file of a build, and answers from there. */
const scope = self as unknown as ServiceWorkerGlobalScope & { __WB_MANIFEST: PrecacheEntry[] };

// The build puts the list of its files in the place of this name.
precacheAndRoute(scope.__WB_MANIFEST);
cleanupOutdatedCaches();

// A newer build waits until it is asked for, by Workbox's own message: nothing changes in the middle of a log.
scope.addEventListener('message', ({ data }: ExtendableMessageEvent) => {
  if ((data as { type?: unknown } | null)?.type === 'SKIP_WAITING') void scope.skipWaiting();
});
