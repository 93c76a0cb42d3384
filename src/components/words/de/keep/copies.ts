import type { say as english } from '../../en/keep/copies.ts';

export const say: typeof english = {
  noProjectWasSaved: 'Aus diesem Browser ist noch kein Projekt als Datei gespeichert.',
  projectWasLastSaved: (day) => `Zuletzt wurde am ${day} ein Projekt als Datei gespeichert.`,
  muchWasDoneSince:
    'Viel ist geschehen, seit zuletzt eine Kopie außerhalb dieses Browsers gespeichert wurde: eine Datei überlebt ein verlorenes Tablet.',
  saveAsFile: 'Als Datei speichern',
  bytes: 'Byte',
  browserKeepsItAlso: ' Der Browser behält es auch, wenn der Platz knapp wird.',
  pullstackTakesOfThat: (bytes, bytes2, kept) => `Pullstack braucht ${bytes} von den ${bytes2}, die dieser Browser gibt.${kept}`,
};
