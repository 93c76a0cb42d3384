import type { say as english } from '../../en/project/project.ts';

export const say: typeof english = {
  untitled: 'Ohne Titel',
  isNoListMend: (name, path) => `${name}: ${path} ist keine Liste; das Feld berichtigen und die Datei noch einmal lesen.`,
  drawer: (name) => `${name}, Schublade`,
  recipe: (name, cut) => `${name}, Rezept ${cut}`,
  targetNamesInkWhich: (fileName, cut) =>
    `${fileName}: target nennt die Farbe "${cut}", die nicht in drawer.inks steht; die Farbe hinzufügen oder von der Testform nehmen.`,
  namesWhichIsNot: (fileName, where, cut) =>
    `${fileName}: ${where} nennt "${cut}", was nicht unter den Rezepten der Datei ist; hinzufügen oder die Auflage herausnehmen.`,
  isWhichEditionBefore: (fileName, where, cut) =>
    `${fileName}: ${where} ist "${cut}", wozu schon eine Auflage davor gehört; eine der beiden herausnehmen.`,
  eachInkOnce: 'jede Farbe einmal',
};
