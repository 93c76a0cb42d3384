/** Rises whenever a kept plan of an older build can no longer be shown. */
export const RECORD_VERSION = 3;
