import { say } from './en/phrases/cautions.ts';

/** Work in which something can hurt, by where it is done in the app. */
export type CautionTopic = 'screens' | 'cutting' | 'inks' | 'target' | 'lesson' | 'press';

const SOLVENTS = say.solventsAndScreenWash;
const CUTTING = say.cuttingPaperFilmOr;
const LAMP = say.exposureLampUltravioletHurts;
const EMULSION = say.sensitiserAndEmulsionKeep;
const WASHER = say.pressureWasherNeverTowards;
const HABITS = say.noFoodOrDrink;

/** Short and in place; the rule is always the data sheet, the studio and the law, never these lists. */
export const CAUTIONS_BY_TOPIC: Readonly<Record<CautionTopic, readonly string[]>> = {
  screens: [EMULSION, LAMP, say.washingOutKeepWater(WASHER), say.reclaimingGlovesGogglesAnd, CUTTING],
  cutting: [say.laserCutterTrainedStaff, say.neverCutPVCOr, say.bladesAndRoutersEye],
  inks: [say.mixingGlovesAndFresh, say.dryPigmentsAndPowders, say.uvCuringInksUncured, HABITS],
  target: [say.forPupilsAdultStays, HABITS],
  lesson: [say.pupilsPrintOnlyUnder, HABITS],
  press: [say.poweredPressAndVacuum, say.waterNearElectricityDry, say.flashAndHeatedDrying, say.stencilRemoverAndCaustic, HABITS],
};

/** What stands on every pull sheet. */
export const CAUTIONS: readonly string[] = [SOLVENTS, LAMP, EMULSION, WASHER, say.largeFramesAndReams, CUTTING, say.dryingRacksFreshAir];

export const CAUTIONS_DEFER = say.followSafetyDataSheets;
