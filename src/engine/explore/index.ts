export type { ExploreInput, ExploreSettings, Hold, Variant } from './types.ts';
export { checkExplore, MAX_EXPLORE_PULLS, MAX_VARIANTS } from './check.ts';
export { createExplorer, explore, type Explorer, type SeenPrint } from './explorer.ts';
export { type Descriptor, descriptorDistance, descriptorText } from './descriptor.ts';
export { checkHolds } from './holds.ts';
export { type ColourArea, type Measures, measureVariant } from './measures.ts';
export { MEASURES, type MeasureWords, VariantMeter, type VariantMeasures } from './variant-measures.ts';
export { pictureKey } from './picture-key.ts';
export { veils, type VeilOptions, type VeilProposal, type VeilResult } from './veil.ts';
