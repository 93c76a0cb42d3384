/** One pull as the planner sees it. Pulls of one kind have the same screen, ink and offset. */
export interface PlanPull {
  screen: string;
  ink: string;
  /** Any text that names the lay offset (and strokes); absent = ''. */
  offset?: string;
}

/** One sheet: its pulls first down first, and which positions [a, b], a < b, must keep their order. */
export interface PlanSheet {
  pulls: readonly PlanPull[];
  overlaps: readonly (readonly [number, number])[];
}

export interface PlanProblem {
  sheets: readonly PlanSheet[];
}

/** A screen on the press with an ink at an offset, and the [sheet, pull] it prints. */
export interface SetUp {
  screen: string;
  ink: string;
  offset: string;
  pulls: [number, number][];
}

export interface PullPlan {
  setUps: SetUp[];
  /** Set-ups whose screen is other than the set-up's before; the first counts. */
  mounts: number;
  /** Set-ups whose ink is other than the set-up's before; the first counts. */
  inkChanges: number;
  /** Set-ups with the same screen as the one before at another offset. */
  registerMoves: number;
  /** No plan has fewer. */
  bound: { setUps: number; mounts: number };
}
