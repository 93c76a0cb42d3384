/** Pulls of one ink that are alike: one screen at one place on so many sheets. */
export interface InkRun {
  ink: string;
  /** Printed area of one pull on one sheet, mm². */
  areaMm2: number;
  sheets: number;
  /** Proofs beside the sheets, pulled alike; absent = none. */
  proofs?: number;
  strokes: number;
  /** What the screen's mesh carries, cm³/m². */
  volumeCm3PerM2: number;
}

export interface InkSettings {
  /** Share of the theoretical ink volume that reaches the paper, 0.5–1; default 0.8, from memory. */
  transfer: number;
  /** How much each stroke after the first adds, share of the first; from memory 0.2–0.6. */
  strokeGain: number;
  /** Ink left in screen and bucket, mL an ink; from memory 50–150. */
  lossMl: number;
  /** Wet density by ink, g/cm³; absent inks take 1.15, from memory. */
  densityGPerCm3: Readonly<Record<string, number>>;
  /** More than was worked out, share of it; absent = none. */
  safety?: number;
}

export interface InkNeed {
  ink: string;
  /** All pulls together, proofs too, m². */
  areaM2: number;
  /** On the sheets, g. */
  printedG: number;
  /** On the proofs, g. */
  proofsG: number;
  /** In screen and bucket, g. */
  lossG: number;
  /** To be on the safe side, g. */
  safetyG: number;
  /** To mix, g. */
  totalG: number;
}
