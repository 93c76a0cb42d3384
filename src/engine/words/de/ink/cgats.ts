import type { say as english } from '../../en/ink/cgats.ts';
import { plural } from '../../language.ts';

export const say: typeof english = {
  moreFaultsLikeThese: (fileName, more) => `${fileName}: ${more} weitere solche Fehler sind nicht aufgeführt.`,
  theseAreColourMatching:
    'Dies sind Spektralwertfunktionen, wie ein Auge sieht, und keine Farbtöne eines Drucks; eine Datei gemessener Felder wählen.',
  thisIsLightOf:
    'Dies ist das Licht einer Lampe oder eines Bildschirms, nicht was ein Druck zurückwirft; die Felder in Remission messen und das ausgeben.',
  thisIsLightThat:
    'Dies ist Licht, das durch einen Film ging, nicht was ein Druck zurückwirft; die Felder in Remission messen und das ausgeben.',
  thereIsNoBEGIN: 'BEGIN_DATA fehlt, dies ist also kein CGATS-Text oder ohne Tabelle; als CGATS.17-Text mit Spektraldaten ausgeben.',
  fileIsNotText: 'Die Datei ist kein Text; die Messungen als CGATS-Text ausgeben.',
  fileHasMillionCharacters: (round, mostCgatsCharacters) =>
    `Die Datei hat ${round} Millionen Zeichen, gelesen werden höchstens ${mostCgatsCharacters} Millionen; weniger Felder ausgeben.`,
  fileHasMoreThan: (mostValues) => `Die Datei hat mehr als ${mostValues} Millionen Werte; weniger Felder ausgeben.`,
  thereIsCharacterThat:
    'Sie enthält ein Zeichen, das kein Text hat, ist also eine andere Art von Datei oder ein Text in UTF-16; als einfachen CGATS-Text ausgeben.',
  fileIsEmptyExport: 'Die Datei ist leer; die Messungen noch einmal ausgeben.',
  tablesUpToThis: (mostFields) => `Die Tabellen bis zu dieser haben mehr als ${mostFields} Felder`,
  itAndAllThat: (many) => `${many}; sie und alle folgenden sind weggelassen: weniger Tabellen in eine Datei ausgeben.`,
  tableHasNoWhole: 'Die Tabelle hat keine ganze Zeile; die Messungen noch einmal ausgeben.',
  tableHasNeitherSpectral:
    'Die Tabelle hat weder Spektralspalten wie SPECTRAL_380 noch LAB_L, LAB_A und LAB_B noch XYZ_X, XYZ_Y und XYZ_Z; mit einem davon ausgeben.',
  xyzColumnsAreFor: (illuminant) =>
    `Die XYZ-Spalten gelten für Lichtart ${illuminant}, aus der sich der Farbton bei Tageslicht nicht ergibt; für D50 ausgeben oder Spektren ausgeben.`,
  columnsAreForIlluminant: (lab, illuminant) =>
    `Die Spalten ${lab} gelten für Lichtart ${illuminant}, werden aber als D50 genommen; für D50 ausgeben oder Spektren ausgeben.`,
  checkItAgainstPatch: (doubt) => `${doubt}; an einem bekannten Feld prüfen.`,
  lMustBeNumber: 'L muss eine Zahl von 0 bis 100 sein',
  mustBeNumberFrom: (value) => `${value} muss eine Zahl von −200 bis 200 sein`,
  notRowsLabIs: (range, quote) => `${range}, nicht ${quote}; das Lab der Zeile ist weggelassen.`,
  mustBeNumberFrom0: (value, most, quote) => `${value} muss eine Zahl von 0 bis ${most} sein, nicht ${quote}; die Zeile ist weggelassen.`,
  tableHasNoData: 'Vor der Tabelle steht kein Datenformat, ihre Spalten haben also keine Namen; mit BEGIN_DATA_FORMAT ausgeben.',
  numberOFFIELDSIs: (value, fields) =>
    `NUMBER_OF_FIELDS ist ${value}, benannt sind aber ${fields} Felder, und jede Zeile hat so viele Werte; es gelten die Namen.`,
  numberOFFIELDSIsBut: (value, fields) =>
    `NUMBER_OF_FIELDS ist ${value}, benannt sind aber ${fields} Felder; das eine oder das andere berichtigen.`,
  fileSeemsToBe: 'die Datei scheint hier abgeschnitten zu sein',
  valueIsMissingOr: 'ein Wert fehlt, oder ein Leerzeichen in einem Namen braucht Anführungszeichen',
  thisRowHasValues: (row, n, why) =>
    `Diese Zeile hat ${row} ${plural(row, { one: 'Wert', other: 'Werte' })} statt ${n}: ${why}; die Zeile ist weggelassen.`,
  someAreMissingSo: 'einige fehlen, die Datei also noch einmal ausgeben',
  correctNumber: 'die Zahl berichtigen',
  numberOFSETSIs: (value, found, mend) =>
    `NUMBER_OF_SETS ist ${value}, gefunden ${plural(found, { one: 'wurde', other: 'wurden' })} aber ${found} ganze ${plural(found, { one: 'Zeile', other: 'Zeilen' })}: ${mend}.`,
  highestOfSpectralValues: (toPrecision) => `der höchste Spektralwert ist ${toPrecision}`,
  fileSaysThatIts: (found) => `Laut Datei gehen die Remissionen von 0 bis 1, aber ${found}; sie werden als Prozent gelesen`,
  fileSaysThatItsReflectances: (found) => `Laut Datei sind die Remissionen Prozent, aber ${found}; sie werden als 0 bis 1 gelesen`,
  fileDoesNotSay: (found) => `Die Datei nennt den Maßstab der Remissionen nicht; sie werden als Prozent gelesen, denn ${found}`,
  fileDoesNotSayHow: (found) =>
    `Die Datei nennt den Maßstab der Remissionen nicht; sie werden als 0 bis 1 gelesen, da wenige über 1 liegen (${found})`,
  spectrumHasValuesFrom: (nm, show, show2) =>
    `Das Spektrum hat ${nm} Werte von ${show} bis ${show2} nm, zu wenige für einen Farbton; mindestens 400 bis 700 nm in Schritten von 20 nm messen.`,
  spectraRunFromTo: (show, show2, firstNm, lastNm) =>
    `Die Spektren gehen von ${show} bis ${show2} nm; darüber hinaus, bis ${firstNm} und ${lastNm} nm, werden die äußersten Werte wiederholt.`,
  wavelengthsAreUpTo: (show, coarsestNm) =>
    `Die Wellenlängen liegen bis zu ${show} nm auseinander, was dazwischenliegt, ist also geschätzt; in Schritten von ${coarsestNm} nm oder feiner messen.`,
  isEmpty: 'ist leer',
  isNotNumber: 'ist keine Zahl',
  isMoreThanReflectance: (mostReflectance) => `ist mehr als ${mostReflectance} % Remission`,
  isReflectanceBelow0: 'ist eine Remission unter 0',
  andMoreOfRow: (worse) =>
    `, und ${worse} ${plural(worse, { one: 'weiterer Wert der Zeile ist', other: 'weitere Werte der Zeile sind' })} schlecht`,
  measurePatchAgainIts: (quote, what, others) => `${quote} ${what}${others}; das Feld noch einmal messen, sein Spektrum ist weggelassen.`,
  isReflectanceLittleBelow: (quote) => `${quote} ist eine Remission wenig unter 0 und wird als 0 gelesen; das Gerät kalibrieren.`,
  isNoWavelengthFrom: (quote) =>
    `${quote} ist keine Wellenlänge von 250 bis 1200 nm oder kommt zweimal vor; das Spektrum der Zeile ist weggelassen.`,
  fileEndsBeforeEND: 'Die Datei endet vor END_DATA; die letzten Zeilen fehlen vielleicht, also noch einmal ausgeben.',
  fileEndsInsideIts: 'Die Datei endet in ihrem Datenformat; noch einmal ausgeben.',
  not: (quote) => `, nicht ${quote}`,
  mustBeFollowedBy: (word, found) => `Auf ${word} muss eine ganze Zahl folgen${found}; stattdessen werden die Zeilen gezählt.`,
  endDATAFORMATIs: 'END_DATA_FORMAT fehlt vor BEGIN_DATA; die Felder enden hier.',
  hasNoBEGINBefore: (word) => `${word} hat kein BEGIN davor und wird übergangen.`,
  isMissingBeforeTable: (word, found) => `${word} fehlt vor ${found}; die Tabelle endet hier.`,
};
