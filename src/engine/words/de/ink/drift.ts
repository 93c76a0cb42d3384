import type { say as english } from '../../en/ink/drift.ts';

export const say: typeof english = {
  isNoDateWrite: (date) => `„${date}“ ist kein Datum; als 2026-03-14 schreiben.`,
};
