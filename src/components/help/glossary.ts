import { numberLocale } from '../../engine/base/language.ts';

/** A word, what it means, and whether it is ours: other words are the trade's or of a standard. */
export interface GlossaryWord {
  readonly word: string;
  readonly means: string;
  readonly ours?: true;
}

const WORDS: readonly GlossaryWord[] = [
  { word: 'AP', means: 'artist’s proof: a print beside the numbered ones, the artist’s own.' },
  { word: 'BAT', means: 'bon à tirer: the proof that is signed as good to print, which all others are to match.' },
  { word: 'bed', means: 'a table with a frame to print at. Two beds can print at the same time.' },
  { word: 'bench sheet', means: 'the paper of one day at the press: its set-ups with times, inks, sheets and boxes to tick.', ours: true },
  { word: 'build-up', means: 'the sheet shown pull by pull, from bare paper on.', ours: true },
  { word: 'cell', means: 'a part of the sheet that one and the same set of pulls covers.', ours: true },
  { word: 'clash', means: 'two or more conditions of a wall that no print can keep together.', ours: true },
  { word: 'condition', means: 'what every print of a wall must keep to.', ours: true },
  { word: 'contrast of edges', means: 'length of all edges × ΔE00 across them ÷ area of the sheet: how lively a print is.', ours: true },
  { word: 'crossed', means: 'of two prints: with something of the order, inks and offsets of each.', ours: true },
  { word: 'drawdown', means: 'ink spread by a blade over a card that is white and black, to see how it covers.' },
  { word: 'edition', means: 'one recipe printed a number of times, with its proofs and numbering.' },
  { word: 'emulsion', means: 'the light-sensitive coat of a screen; light through the film positive hardens it where no ink shall pass.' },
  { word: 'EV', means: 'édition variée: a numbered edition whose prints differ on purpose.' },
  { word: 'exposure', means: 'the hardening of the emulsion by UV light through the film positive. Never look into the lamp.' },
  { word: 'film positive', means: 'the opaque drawing through which a screen is exposed.' },
  { word: 'free swap', means: 'two neighbouring pulls that may change places: the print stays the same within a chosen ΔE.', ours: true },
  { word: 'ghost', means: 'the faint trace of an earlier stencil that stays in a mesh.' },
  { word: 'HC', means: 'hors commerce: a print of an edition that is not for sale.' },
  { word: 'ink film', means: 'the coat of ink that a pull lays down.' },
  { word: 'kept as it came', means: 'a sheet that was pulled differently from its recipe and is worth keeping.', ours: true },
  { word: 'lays', means: 'the three stops against which paper is laid, so that every sheet lies alike.' },
  { word: 'let down', means: 'made clearer with transparent base.' },
  { word: 'mesh', means: 'the fabric of a screen: threads a centimetre, and their thickness in µm. It says how much ink passes.' },
  { word: 'mount', means: 'to put a screen into the press; it costs minutes, so that few mounts make a short day.' },
  { word: 'offset', means: 'how far a pull lies from where it was drawn: mm right, mm down, and a turn.', ours: true },
  { word: 'order class', means: 'all orders of the same pulls that print the same.', ours: true },
  {
    word: 'order graph',
    means: 'pulls as dots, with a line between two whose order shows in the print; the thicker, the more.',
    ours: true,
  },
  { word: 'over', means: 'a sheet printed beyond what is asked for, as some are spoiled.' },
  { word: 'overprint colour', means: 'a colour that appears where inks overlap and is no ink’s own.' },
  { word: 'passport', means: 'the paper that goes with one sheet through all its pulls.', ours: true },
  { word: 'PP', means: 'printer’s proof: a print for the printer.' },
  { word: 'print', means: 'what hangs on the wall or is pulled on a sheet.' },
  { word: 'pull', means: 'one impression: one screen, in one ink, on one sheet.' },
  { word: 'pull order', means: 'the set-ups one after the other, each with the sheets it goes on.', ours: true },
  { word: 'rack', means: 'shelves on which sheets dry.' },
  { word: 'recipe', means: 'a kept print with all that is needed to build it.', ours: true },
  {
    word: 'reclaim',
    means: 'to wash the stencil out of a screen, so that it can be coated anew. Wear what the sheets of the products ask for.',
  },
  { word: 'register marks', means: 'crosses on films by which one screen is laid true to another.' },
  { word: 'screen', means: 'a stencil on a mesh in a frame; it has a number.' },
  { word: 'set-up', means: 'one screen on the press in one ink at one offset.', ours: true },
  { word: 'shape', means: 'closed outlines in mm, as they lie in the Drawer.' },
  { word: 'snap-off', means: 'the gap between mesh and paper, so that the mesh lifts behind the squeegee.' },
  { word: 'squeegee', means: 'the blade that pulls ink through the mesh.' },
  { word: 'stack', means: 'the pulls of one sheet, first down to last down.' },
  { word: 'state', means: 'the sheet after so many pulls; also, whether a screen is drawn, to make or made.' },
  { word: 'step test', means: 'one screen exposed in steps of time, to find how long its emulsion wants.' },
  { word: 'stroke', means: 'one pass of the squeegee; a second lays more ink.' },
  { word: 'test sheet', means: 'the sheet of a visit on which every set-up is tried first.' },
  { word: 'threshold', means: 'of a picture that is traced: the grey below which it is ink.' },
  { word: 'transparent base', means: 'ink without pigment.' },
  { word: 'trapping', means: 'how thick a film is on another film, against on paper.' },
  { word: 'veil', means: 'one more translucent pull over others, to soften the contrast between them.', ours: true },
  { word: 'visit', means: 'days and hours at a studio, and the sheets to be printed in them.', ours: true },
  { word: 'wash-up', means: 'cleaning screen and squeegee of an ink. Mind solvents: gloves, air, the safety data sheet.' },
  { word: 'ΔE00', means: 'how far two colours are apart to the eye (CIEDE2000); about 1 is just visible side by side.' },
];

/** Every word that is ours or the trade's and stands in the app, by the alphabet. */
export const GLOSSARY: readonly GlossaryWord[] = WORDS.toSorted((a, b) => a.word.localeCompare(b.word, numberLocale()));

/** Words that have all of what is looked for in them or their meaning. */
export function wordsWith(text: string): readonly GlossaryWord[] {
  const sought = text.toLowerCase().split(/\s+/u).filter(Boolean);
  return GLOSSARY.filter(({ word, means }) => sought.every((part) => `${word} ${means}`.toLowerCase().includes(part)));
}
