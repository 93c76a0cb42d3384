/**
 * An overprint this far from the paper and from each of its inks alone is a colour of its own, ΔE00;
 * chosen, about the step between two named colours: what only just differs side by side is no colour
 * that anyone would name.
 */
export const OVERPRINT_COLOUR_DELTA_E = 10;
