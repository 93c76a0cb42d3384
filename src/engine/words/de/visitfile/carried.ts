import type { say as english } from '../../en/visitfile/carried.ts';

export const say: typeof english = {
  thisPictureCarriesNo:
    'dieses Bild trägt kein Rezept; ein PNG oder SVG wählen, das hier aus einem Druck gespeichert und seither von keinem anderen Programm gespeichert wurde',
  recipeInThisPicture:
    'das Rezept in diesem Bild ist abgeschnitten oder beschädigt; das Bild noch einmal speichern oder die Datei des Rezepts selbst wählen',
};
