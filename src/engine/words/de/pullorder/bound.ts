import type { say as english } from '../../en/pullorder/bound.ts';

export const say: typeof english = {
  someSheetCannotBe: 'Ein Bogen kann nicht fertig werden: seine Reihenfolge geht im Kreis.',
};
