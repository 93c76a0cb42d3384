import type { say as english } from '../../en/geometry/stroke.ts';

export const say: typeof english = {
  linesHaveMoreThan: (most) => `Linien haben mehr als ${most} Striche; die Striche verlängern.`,
};
