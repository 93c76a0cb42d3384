/** What became of a screen after the edition. */
export const FATES = ['kept', 'cancelled', 'destroyed'] as const;

/** The fate of one screen, as it was typed. */
export interface ScreenFate {
  /** Id of the recipe's screen. */
  screen: string;
  fate: (typeof FATES)[number];
  by: string;
  when: string;
}
