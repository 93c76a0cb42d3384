import type { say as english } from '../../en/log/now.ts';

export const say: typeof english = {
  andMore: (title, more) => `${title} und ${more} mehr`,
  sheetWouldHave: (number, pulls, most) =>
    `Bogen ${number} hätte ${pulls} Druckgänge, und ein Bogen nimmt höchstens ${most} auf; weniger wählen oder einen anderen Bogen.`,
};
