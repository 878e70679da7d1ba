import { type Direction, type Material, type StrengthNumbers } from '../materials/index.js';
import type { End } from './numbers.js';
export type MoistureState = 'dry' | 'conditioned' | 'saturated';
export interface Matter {
    readonly material: Material;
    readonly modulus: number;
    readonly poissonRatio: number;
    readonly thermalExpansion: number;
    readonly thermalConductivity: number;
    readonly softening: number;
    readonly softeningKind: 'glassTransition' | 'service';
    readonly creepCoefficient: number;
    readonly creepExponent: number;
    readonly frictionOnSteel: number;
    readonly swelling: number;
    readonly strainLimit: number;
    readonly strength: {
        readonly [D in Direction]: StrengthNumbers;
    };
    readonly cyclic: {
        readonly [D in Direction]: StrengthNumbers;
    };
}
export declare function matterOf(material: Material, end: End, moisture: MoistureState): Matter;
