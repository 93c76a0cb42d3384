/** The file of a build that keeps the page for days without a network; it must lie beside index.html. */
export const OFFLINE_FILE = 'offline.js';
