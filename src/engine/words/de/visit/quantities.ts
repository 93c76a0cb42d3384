import type { say as english } from '../../en/visit/quantities.ts';

export const say: typeof english = {
  moreThan0At: 'mehr als 0, höchstens 1',
  safetyMargin: 'Sicherheitszuschlag',
  n0OrMore: '0 oder mehr',
  ofInk: (ink) => ` der Farbe ${ink}`,
  printedArea: (theOf) => `bedruckte Fläche${theOf}`,
  n0MmOrMore: '0 mm² oder mehr',
  numberOfSheets: (theOf) => `Zahl der Bögen${theOf}`,
  wholeNumber: 'eine ganze Zahl',
  numberOfProofs: (theOf) => `Zahl der Probedrucke${theOf}`,
  meshVolume: (theOf) => `Gewebevolumen${theOf}`,
  moreThan0Cm: 'mehr als 0 cm³/m²',
  moreThan0G: 'mehr als 0 g/cm³',
  sumOfPartsIn: (ink) => `Summe der Teile in der Mischung der Farbe ${ink}`,
  moreThan0No: 'mehr als 0, kein Teil unter 0',
  isGive: (name, found, allowed) => `Diese Angabe geht nicht: ${name} ${found}. Erlaubt ist: ${allowed}.`,
  goodSheets: 'gute Bögen',
  setUpSheets: 'Einrichtebögen',
  numberOfIsGive: (name, value) => `Diese Zahl geht nicht: ${name} ${value}. Eine ganze Zahl angeben, 0 oder mehr.`,
  shareOfRejectsIs: (rejectPerRun) => `Der Anteil des Ausschusses ist ${rejectPerRun} %: 0 bis unter 100 % angeben.`,
  atRejectsOverRuns: (rejectPerRun, runs) =>
    `Bei ${rejectPerRun} % Ausschuss in ${runs} Durchläufen reicht kein Papierstapel: eines von beiden senken.`,
};
