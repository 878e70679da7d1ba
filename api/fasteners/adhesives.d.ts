import { type Property } from '../formula/index.js';
declare const METALS: readonly ["steel", "stainlessSteel", "aluminium"];
declare const PRINTS: readonly ["printedPLA", "printedPETG", "printedABS", "printedPA"];
declare const ADHESIVES: readonly ["anaerobicRetaining", "roomCureEpoxy"];
declare const GAPS: readonly ["best", "wide"];
export type AdhesiveName = (typeof ADHESIVES)[number];
export type BondSurface = (typeof METALS)[number] | (typeof PRINTS)[number];
export type BondGap = (typeof GAPS)[number];
export interface BondPrior {
    readonly shearStrength: Property<'stress'>;
    readonly glassTransitionTemperature: Property<'glassTransitionTemperature'>;
    readonly materialFactor: Property<'ratio'>;
    readonly gapFactor: Property<'ratio'>;
    readonly fatigueFactor: Property<'ratio'>;
    readonly ageingFactor: Property<'ratio'>;
}
export declare function bondPrior(adhesive: AdhesiveName, surface: BondSurface, gap?: BondGap): BondPrior;
export {};
