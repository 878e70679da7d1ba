import { type Evaluator, Property, type Source } from '../formula/index.js';
import { type In, type Note } from '../units/index.js';
import { type Direction, type Moisture } from './conditions.js';
import { type Material } from './record.js';
export interface StressConditions {
    readonly direction: Direction;
    readonly temperature: In<'temperature'>;
    readonly duration: In<'time'>;
    readonly moisture: Moisture;
    readonly cycles?: In<'count'> | undefined;
    readonly safetyFactor: In<'ratio'>;
}
export interface Factor {
    readonly name: 'direction' | 'temperature' | 'duration' | 'moisture' | 'fatigue';
    readonly typical: number;
    readonly low: number;
    readonly high: number;
    readonly source: Source;
    readonly reason: string;
}
export interface AllowableStress {
    readonly stress: Property<'stress'>;
    readonly strength: Property<'stress'>;
    readonly factors: readonly Factor[];
    readonly safetyFactor: number;
    readonly state: 'usable' | 'aboveLimit' | 'aboveTable';
    readonly notes: readonly Note[];
}
type End = 'low' | 'typical' | 'high';
export interface StrengthNumbers {
    readonly strength: number;
    readonly direction: number;
    readonly moisture: number;
    readonly kept1000Hours: number;
    readonly kept1Year: number;
    readonly fatigueRatio: number;
    readonly glassTransition: number;
    readonly temperatures: readonly number[];
    readonly shares: readonly number[];
}
export declare function strengthNumbers(material: Material, direction: Direction, moisture: Moisture, end?: End, cyclic?: boolean): StrengthNumbers;
export declare function strengthSi(x: StrengthNumbers, temperature: number, duration: number, cycles: number, safetyFactor: number, of?: Evaluator): number;
export declare const weakest: (sources: readonly Source[]) => Source;
export declare function allowableStress(material: Material, conditions: StressConditions): AllowableStress;
export {};
