import { type Kind, Quantity } from '../../units/index.js';
import { type MeasurementId } from '../learning/measurements.js';
import { type Joint } from '../numbers.js';
import type { Leg } from '../specification/describe.js';
export interface StandMeasurement {
    readonly id: MeasurementId;
    readonly joint: Joint | undefined;
    readonly log: string;
    readonly what: string;
    readonly how: string;
    readonly caution: string;
    readonly predictedIs: string;
    readonly predicted: Quantity<Kind>;
    readonly band: readonly [Quantity<Kind>, Quantity<Kind>];
    readonly corrects: string | undefined;
    readonly information: number;
    readonly moves: string | undefined;
    readonly csv: string;
}
export interface StandPlan {
    readonly leg: Leg;
    readonly measurements: readonly StandMeasurement[];
    readonly cautions: readonly string[];
}
export declare function standPlan(leg: Leg): StandPlan;
