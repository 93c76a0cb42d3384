/** Work in which something can hurt, by where it is done in the app. */
export type CautionTopic = 'screens' | 'cutting' | 'inks' | 'target' | 'lesson' | 'press';

const SOLVENTS = 'Solvents and screen wash: gloves and eye protection, fresh air, no flame or spark; keep rags in a closed metal bin.';
const CUTTING = 'Cutting paper, film or stencils: a guarded blade, fingers behind the rule; leave laser cutting to trained staff.';
const LAMP = 'Exposure lamp: ultraviolet hurts eyes and skin; never look into it, close the cover first.';
const EMULSION = 'Sensitiser and emulsion: keep off skin and out of the drain; do not use dichromates.';
const WASHER = 'Pressure washer: never towards people or skin; eye and ear protection.';
const HABITS = 'No food or drink where inks and chemicals are; know where the eye wash is, and wash hands before you leave.';

/** Short and in place; the rule is always the data sheet, the studio and the law, never these lists. */
export const CAUTIONS_BY_TOPIC: Readonly<Record<CautionTopic, readonly string[]>> = {
  screens: [
    EMULSION,
    LAMP,
    `Washing out: keep water away from plugs and lamps, and wet floors clear. ${WASHER}`,
    'Reclaiming: gloves, goggles and fresh air; stencil remover and caustic haze remover are never mixed nor used one straight upon the other: rinse between.',
    CUTTING,
  ],
  cutting: [
    'Laser cutter: trained staff run it, never left alone, with its extraction on and its lid shut; know the stop button and the extinguisher.',
    'Never cut PVC or vinyl by laser: it gives off chlorine. Cut only what its safety data sheet and the workshop allow; brass, copper and aluminium throw the beam back.',
    'Blades and routers: eye protection, fingers behind the rule or away from the tool; dust is drawn off, and glue used in fresh air.',
  ],
  inks: [
    'Mixing: gloves and fresh air; wipe up spills at once, and no ink or rinse into the drain.',
    'Dry pigments and powders: do not raise dust, and wear the mask that the data sheet names.',
    'UV-curing inks, uncured: never on skin, for they can make it allergic for good; wash with soap, not with solvent.',
    HABITS,
  ],
  target: ['For pupils: an adult stays with them, with water-based inks and no solvents.', HABITS],
  lesson: [
    'Pupils print only under supervision, with water-based inks and no solvents; an adult exposes, cuts and washes with pressure.',
    HABITS,
  ],
  press: [
    'Powered press and vacuum bed: hands, hair and sleeves clear while it moves; know the stop button, and switch off before you reach in.',
    'Water near electricity: dry hands on switches, leads off the floor; keep wet floors clear.',
    'Flash and heated drying: hot surfaces and vapours; fresh air, nothing that burns nearby, never left alone.',
    'Stencil remover and caustic haze remover are never mixed.',
    HABITS,
  ],
};

/** What stands on every pull sheet. */
export const CAUTIONS: readonly string[] = [
  SOLVENTS,
  LAMP,
  EMULSION,
  WASHER,
  'Large frames and reams of paper: two people lift.',
  CUTTING,
  'Drying racks: fresh air while sheets dry; inks are not for food contact.',
];

export const CAUTIONS_DEFER = 'Follow the safety data sheets, studio rules, local codes and trained staff; they come before this sheet.';
