/** Short and in place; the rule is always the data sheet, the studio and the law, never this list. */
export const CAUTIONS: readonly string[] = [
  'Solvents and screen wash: gloves and eye protection, fresh air, no flame or spark; keep rags in a closed metal bin.',
  'Exposure lamp: ultraviolet hurts eyes and skin; never look into it, close the cover first.',
  'Sensitiser and emulsion: keep off skin and out of the drain; do not use dichromates.',
  'Pressure washer: never towards people or skin; eye and ear protection.',
  'Large frames and reams of paper: two people lift.',
  'Cutting paper, film or plates: a guarded blade, fingers behind the rule; laser only with its own cautions, never PVC, and let a specialist judge bare metal.',
  'Drying racks: fresh air while sheets dry; inks are not for food contact.',
];

export const CAUTIONS_DEFER = 'Follow the safety data sheets, studio rules, local codes and trained staff; they come before this sheet.';
