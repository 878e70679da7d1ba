import { Property, type Source } from '../formula/index.js';
import { type In, type Note } from '../units/index.js';
import type { Moisture } from './conditions.js';
import { type Material } from './record.js';
export interface ModulusConditions {
    readonly direction: 'alongLayers' | 'acrossLayers';
    readonly temperature: In<'temperature'>;
    readonly duration: In<'time'>;
    readonly moisture: Moisture;
}
export interface ModulusFactor {
    readonly name: 'temperature' | 'moisture' | 'creep';
    readonly typical: number;
    readonly low: number;
    readonly high: number;
    readonly source: Source;
    readonly reason: string;
}
export interface DesignModulus {
    readonly modulus: Property<'modulus'>;
    readonly start: Property<'modulus'>;
    readonly factors: readonly ModulusFactor[];
    readonly state: 'usable' | 'aboveLimit' | 'aboveTable';
    readonly notes: readonly Note[];
}
export declare function designModulus(material: Material, conditions: ModulusConditions): DesignModulus;
