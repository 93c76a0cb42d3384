import { speak } from '../../../../engine/words/language.ts';

export const say = speak('phrases/cautions', {
  solventsAndScreenWash:
    'Solvents and screen wash: gloves and eye protection, fresh air, no flame or spark; keep rags in a closed metal bin.',
  cuttingPaperFilmOr: 'Cutting paper, film or stencils: a guarded blade, fingers behind the rule; leave laser cutting to trained staff.',
  exposureLampUltravioletHurts: 'Exposure lamp: ultraviolet hurts eyes and skin; never look into it, close the cover first.',
  sensitiserAndEmulsionKeep: 'Sensitiser and emulsion: keep off skin and out of the drain; do not use dichromates.',
  pressureWasherNeverTowards: 'Pressure washer: never towards people or skin; eye and ear protection.',
  noFoodOrDrink: 'No food or drink where inks and chemicals are; know where the eye wash is, and wash hands before you leave.',
  washingOutKeepWater: (washer: string) => `Washing out: keep water away from plugs and lamps, and wet floors clear. ${washer}`,
  reclaimingGlovesGogglesAnd:
    'Reclaiming: gloves, goggles and fresh air; stencil remover and caustic haze remover are never mixed nor used one straight upon the other: rinse between.',
  laserCutterTrainedStaff:
    'Laser cutter: trained staff run it, never left alone, with its extraction on and its lid shut; know the stop button and the extinguisher.',
  neverCutPVCOr:
    'Never cut PVC or vinyl by laser: it gives off chlorine. Cut only what its safety data sheet and the workshop allow; brass, copper and aluminium throw the beam back.',
  bladesAndRoutersEye:
    'Blades and routers: eye protection, fingers behind the rule or away from the tool; dust is drawn off, and glue used in fresh air.',
  mixingGlovesAndFresh: 'Mixing: gloves and fresh air; wipe up spills at once, and no ink or rinse into the drain.',
  dryPigmentsAndPowders: 'Dry pigments and powders: do not raise dust, and wear the mask that the data sheet names.',
  uvCuringInksUncured: 'UV-curing inks, uncured: never on skin, for they can make it allergic for good; wash with soap, not with solvent.',
  forPupilsAdultStays: 'For pupils: an adult stays with them, with water-based inks and no solvents.',
  pupilsPrintOnlyUnder:
    'Pupils print only under supervision, with water-based inks and no solvents; an adult exposes, cuts and washes with pressure.',
  poweredPressAndVacuum:
    'Powered press and vacuum bed: hands, hair and sleeves clear while it moves; know the stop button, and switch off before you reach in.',
  waterNearElectricityDry: 'Water near electricity: dry hands on switches, leads off the floor; keep wet floors clear.',
  flashAndHeatedDrying: 'Flash and heated drying: hot surfaces and vapours; fresh air, nothing that burns nearby, never left alone.',
  stencilRemoverAndCaustic: 'Stencil remover and caustic haze remover are never mixed.',
  largeFramesAndReams: 'Large frames and reams of paper: two people lift.',
  dryingRacksFreshAir: 'Drying racks: fresh air while sheets dry; inks are not for food contact.',
  followSafetyDataSheets: 'Follow the safety data sheets, studio rules, local codes and trained staff; they come before this sheet.',
});
