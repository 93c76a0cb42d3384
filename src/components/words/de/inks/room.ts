import type { say as english } from '../../en/inks/room.ts';

export const say: typeof english = {
  paper: 'Papier',
  overEachOther: 'Übereinander',
  thePaper: 'Papier',
  oneStrokeOfEach: (name) =>
    `Je ein Rakelzug auf: ${name}. Wo ein Feld und sein Spiegelbild an der Diagonale sich unterscheiden, macht die Reihenfolge der beiden etwas aus.`,
  allInks: '← Alle Farben',
  inks: 'Farben',
  matchColour: 'Ton treffen',
  addInk: 'Neue Farbe',
  noInksYetAdd: 'Noch keine Farben: eine aus ihrem Farbton auf Weiß und auf Schwarz hinzufügen.',
  strokes: 'Rakelzüge',
  eachFurtherStrokeAdds: 'Jeder weitere Rakelzug fügt hinzu, von der ersten Schicht',
  inTheorySecondStroke:
    'In der Theorie verdoppelt ein zweiter Rakelzug die Schicht; in der Praxis ist es etwa das 1,2- bis 1,6-Fache (aus dem Gedächtnis): vorgegeben sind 40 % mehr.',
  newInk: 'Eine neue Farbe',
  ink: (name) => `Farbe ${name}`,
  hereAndOnWall: 'Hier und an der Wand und auf der Werkbank. Aus: Farben, wie ein Messgerät sie misst.',
  showPaperAsWhite: 'Papier als Weiß zeigen',
  stockInks: 'Grundfarben',
  weighedIntoMixes: 'in Mischungen gewogen',
  base: 'Transparentweiß',
  mix: (basisShort) => `Mischung, ${basisShort}`,
};
