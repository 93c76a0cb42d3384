import type { say as english } from '../../en/inks/photo.ts';

export const say: typeof english = {
  cardWhite: 'Weiß der Karte',
  cardBlack: 'Schwarz der Karte',
  inkOverWhite: 'Farbe auf Weiß',
  inkOverBlack: 'Farbe auf Schwarz',
  oneStrokeOnContrast:
    'Ein Rakelzug auf einer Kontrastkarte, gleichmäßig beleuchtet, ohne Glanz, mit etwas blankem Weiß und blankem Schwarz im Bild.',
  choosePhoto: 'Ein Foto wählen',
  anotherPhoto: 'Ein anderes Foto',
  photoStaysInThis: (hint) => `${hint} Das Foto bleibt in diesem Browser.`,
  photoArrowKeysMove: (name) => `Foto: Pfeiltasten bewegen die Lupe, mit Umschalt weiter, Eingabe nimmt auf: ${name}`,
  patchToPick: 'Aufzunehmendes Messfeld',
  averagesPx: (value) => `Mittelt ${value} × ${value} px.`,
  ofPatchesPickedNext: ({ marks, patches, name, x, y }) =>
    `${marks} von ${patches} Messfeldern aufgenommen; als Nächstes ${name}, Lupe bei ${x}, ${y}`,
  tapMiddleOf: 'In die Mitte tippen von',
  ofPicked: (picks, patches) => `${picks} von ${patches} aufgenommen`,
};
