import type { say as english } from '../../en/visitfile/visitfile.ts';
import { counted } from '../../language.ts';

export const say: typeof english = {
  holdsNoLesson: 'enthält keine Lektion',
  isCutOffOr: 'ist abgeschnitten oder wurde geändert',
  theAddress: 'Die Adresse',
  holdsLessonThatCannot: 'enthält eine Lektion, die nicht gedruckt werden kann',
  thisAddressOpenLink: (sentence) => `Diese Adresse ${sentence}; den Link noch einmal öffnen oder einen neuen anlegen lassen.`,
  isButThereAre: (fileName, where, at, count) =>
    `${fileName}: ${where} ist ${at}, es gibt aber ${count}; den Besuch noch einmal speichern, wo er gemacht wurde.`,
  saveVisitAgainWhere: (fileName, message) => `${fileName}: ${message}; den Besuch noch einmal speichern, wo er gemacht wurde.`,
  planTimesHasEntries: (times, cards) =>
    `plan.times hat ${counted(times, { one: 'Eintrag', other: 'Einträge' })} für ${counted(cards, { one: 'Einrichtung', other: 'Einrichtungen' })}`,
  planCardsNumberIs: (c, number, number2) => `plan.cards[${c}].number ist ${number}, nicht ${number2}`,
  namesRecipeOrPull: (where) => `${where} nennt ein Rezept oder einen Druckgang, den es nicht gibt`,
  namesSheetThatIts: (where) => `${where} nennt einen Bogen, den das Rezept nicht hat`,
  planCardsTestNames: (c) => `plan.cards[${c}].test nennt einen Bogen oder Druckgang, den es nicht gibt`,
  planCardsSheetsNames: (c) => `plan.cards[${c}].sheets nennt einen Bogen, den es nicht gibt`,
  planPartsSetUpIs: (p, setUp, cards) =>
    `plan.parts[${p}].setUp ist ${setUp}, es gibt aber ${counted(cards, { one: 'Einrichtung', other: 'Einrichtungen' })}`,
  colourSuchAsA63c20: 'eine Farbe wie #a63c20',
  thisAddressScanCode: (sentence) => `Diese Adresse ${sentence}; den Code noch einmal lesen oder einen neuen anlegen lassen.`,
  holdsNoSetUp: 'enthält keine Einrichtung',
  thereIsNoIn: (project) => `darin fehlt ${project}, dies ist also kein Besuch; eine Datei wählen, die hier als Besuch gespeichert wurde`,
  thereIsButNo: (plan, log) => `darin ist ${plan}, aber ${log} fehlt; den Besuch noch einmal speichern, wo er gemacht wurde`,
  thereIsNoLog: 'darin ist kein Protokoll; einen Besuch wählen, in dem etwas geplant wurde',
  thisIsNoZip: 'dies ist kein Zip; eine Datei wählen, die hier als Besuch gespeichert wurde',
  fileHasBytesOver: (bytes, mostPacked) =>
    `die Datei hat ${bytes} Bytes, mehr als die ${mostPacked}, die ein Besuch haben darf; eine andere Datei wählen`,
  zipIsCutOff: 'das Zip ist abgeschnitten oder beschädigt; den Besuch noch einmal speichern oder die Datei neu kopieren',
  isInZipTwice: (name) => `${name} ist zweimal im Zip; den Besuch noch einmal speichern`,
  hasBytesUnpackedOver: (name, originalSize, mostUnpacked) =>
    `${name} hat entpackt ${originalSize} Bytes, mehr als die erlaubten ${mostUnpacked}; eine andere Datei wählen`,
  isLargerThanIts: (name) =>
    `${name} ist größer, als die gepackten Bytes fassen können; den Besuch noch einmal speichern oder die Datei neu kopieren`,
  weekOnThisPress: 'Die Woche an dieser Presse: others ist keine Liste von Besuchen; deren Dateien noch einmal hinzufügen.',
  weekOnThisPressWhere: (where) => `Die Woche an dieser Presse, ${where}`,
};
