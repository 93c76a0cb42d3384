import type { say as english } from '../../en/phrases/cautions.ts';

export const say: typeof english = {
  solventsAndScreenWash:
    'Lösemittel und Siebreiniger: Handschuhe und Augenschutz, frische Luft, keine Flamme und kein Funke; Lappen in einem geschlossenen Metalleimer aufbewahren.',
  cuttingPaperFilmOr:
    'Papier, Film oder Schablonen schneiden: geschützte Klinge, Finger hinter dem Lineal; Laserschneiden nur durch geschultes Personal.',
  exposureLampUltravioletHurts: 'Belichtungslampe: Ultraviolett schadet Augen und Haut; nie hineinsehen, zuerst die Abdeckung schließen.',
  sensitiserAndEmulsionKeep: 'Sensibilisator und Kopierschicht: nicht auf die Haut und nicht in den Abfluss; keine Dichromate verwenden.',
  pressureWasherNeverTowards: 'Hochdruckreiniger: nie auf Menschen oder Haut richten; Augen- und Gehörschutz.',
  noFoodOrDrink:
    'Kein Essen und Trinken, wo Farben und Chemikalien sind; wissen, wo die Augendusche ist, und vor dem Gehen die Hände waschen.',
  washingOutKeepWater: (washer) => `Auswaschen: Wasser von Steckern und Lampen fernhalten, nasse Böden frei halten. ${washer}`,
  reclaimingGlovesGogglesAnd:
    'Entschichten: Handschuhe, Schutzbrille und frische Luft; Entschichter und ätzender Geisterbildentferner werden nie gemischt und nie unmittelbar nacheinander aufgetragen: dazwischen spülen.',
  laserCutterTrainedStaff:
    'Laserschneider: nur geschultes Personal bedient ihn, nie unbeaufsichtigt, mit laufender Absaugung und geschlossenem Deckel; Notaus und Feuerlöscher kennen.',
  neverCutPVCOr:
    'PVC oder Vinyl nie mit dem Laser schneiden: es setzt Chlor frei. Nur schneiden, was Sicherheitsdatenblatt und Werkstatt erlauben; Messing, Kupfer und Aluminium werfen den Strahl zurück.',
  bladesAndRoutersEye:
    'Klingen und Fräsen: Augenschutz, Finger hinter dem Lineal oder weg vom Werkzeug; Staub wird abgesaugt, und Kleber wird an frischer Luft verwendet.',
  mixingGlovesAndFresh:
    'Mischen: Handschuhe und frische Luft; Verschüttetes sofort aufwischen, und weder Farbe noch Spülwasser in den Abfluss.',
  dryPigmentsAndPowders: 'Trockene Pigmente und Pulver: keinen Staub aufwirbeln und die Maske tragen, die das Datenblatt nennt.',
  uvCuringInksUncured:
    'UV-härtende Farben, ungehärtet: nie auf die Haut, denn sie können auf Dauer allergisch machen; mit Seife waschen, nicht mit Lösemittel.',
  forPupilsAdultStays:
    'Mit Schülerinnen und Schülern: eine erwachsene Person bleibt dabei, mit wasserbasierten Farben und ohne Lösemittel.',
  pupilsPrintOnlyUnder:
    'Schülerinnen und Schüler drucken nur unter Aufsicht, mit wasserbasierten Farben und ohne Lösemittel; belichten, schneiden und mit Hochdruck waschen ist Sache einer erwachsenen Person.',
  poweredPressAndVacuum:
    'Angetriebene Presse und Vakuumtisch: Hände, Haare und Ärmel fernhalten, solange sie sich bewegt; Notaus kennen und ausschalten, bevor hineingegriffen wird.',
  waterNearElectricityDry: 'Wasser nahe an Strom: Schalter nur mit trockenen Händen, Kabel weg vom Boden; nasse Böden frei halten.',
  flashAndHeatedDrying:
    'Zwischentrocknung und Trocknen mit Hitze: heiße Flächen und Dämpfe; frische Luft, nichts Brennbares in der Nähe, nie unbeaufsichtigt.',
  stencilRemoverAndCaustic: 'Entschichter und ätzender Geisterbildentferner werden nie gemischt.',
  largeFramesAndReams: 'Große Rahmen und Papierpakete: zu zweit heben.',
  dryingRacksFreshAir: 'Trockenhorden: frische Luft, solange Bögen trocknen; Farben sind nicht für den Kontakt mit Lebensmitteln.',
  followSafetyDataSheets:
    'Sicherheitsdatenblätter, Werkstattregeln, örtliche Vorschriften und geschultes Personal befolgen; sie gehen diesem Blatt vor.',
};
