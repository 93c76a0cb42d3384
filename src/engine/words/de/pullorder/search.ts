import type { say as english } from '../../en/pullorder/search.ts';

export const say: typeof english = {
  pullOrderNeedsMore: (maxSetUps) => `Die Druckfolge braucht mehr als ${maxSetUps} Einrichtungen: weniger Rezepte auf einmal planen.`,
};
