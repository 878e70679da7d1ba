import { type In, Quantity } from '../../units/index.js';
import { type Joint } from '../numbers.js';
import type { Leg } from '../specification/describe.js';
import { type Assumed } from './bench.js';
import { type Gains, type GravityTerms } from './control-gains.js';
import { type CurrentLimit } from './control-limits.js';
export interface ControlOptions {
    readonly loopRate?: In<'frequency'>;
    readonly durations?: readonly In<'time'>[];
    readonly copperMass?: In<'mass'>;
}
export interface HomingCheck {
    readonly current: Quantity<'peakPhaseCurrent'>;
    readonly jointTorque: Quantity<'torque'>;
    readonly countsBetweenStops: Quantity<'count'>;
    readonly tolerance: Quantity<'count'>;
    readonly smallestSlip: Quantity<'angle'>;
    readonly procedure: readonly string[];
}
export interface JointControl {
    readonly joint: Joint;
    readonly ratio: Quantity<'ratio'>;
    readonly sign: 1 | -1;
    readonly jointLimits: readonly [Quantity<'angle'>, Quantity<'angle'>];
    readonly motorLimits: readonly [Quantity<'angle'>, Quantity<'angle'>];
    readonly countsPerAngle: Quantity<'countsPerAngle'>;
    readonly jointTorquePerPeakAmpere: Quantity<'torqueConstantPeakPhase'>;
    readonly jointTorquePerRmsAmpere: Quantity<'torqueConstantRmsPhase'>;
    readonly currentLimits: readonly CurrentLimit[];
    readonly standTorque: Quantity<'torque'>;
    readonly dragTorque: Quantity<'torque'>;
    readonly dragCurrent: Quantity<'peakPhaseCurrent'>;
    readonly driveLoss: Quantity<'ratio'>;
    readonly driveStiffness: Quantity<'torsionalStiffness'>;
    readonly reflectedInertia: Quantity<'momentOfInertia'>;
    readonly gains: Gains;
    readonly homing: HomingCheck;
}
export interface ControlSheet {
    readonly leg: Leg;
    readonly conventions: readonly string[];
    readonly motor: {
        readonly polePairs: Quantity<'count'> | undefined;
        readonly torqueConstants: ReturnType<typeof constants>;
        readonly warmTorqueConstant: Quantity<'torqueConstantPeakPhase'>;
        readonly phaseResistance: Quantity<'electricalResistance'>;
        readonly hottestPhaseResistance: Quantity<'electricalResistance'>;
    };
    readonly gravity: GravityTerms;
    readonly joints: {
        readonly [J in Joint]: JointControl;
    };
    readonly assumed: readonly Assumed[];
    readonly cautions: readonly string[];
}
export declare function controlSheet(leg: Leg, options?: ControlOptions): ControlSheet;
declare const constants: (emf: number) => {
    readonly peakPhase: Quantity<"torqueConstantPeakPhase">;
    readonly rmsPhase: Quantity<"torqueConstantRmsPhase">;
    readonly powerInvariant: Quantity<"torqueConstantPowerInvariant">;
    readonly dcTrapezoidal: Quantity<"torqueConstantDc">;
    readonly dcSinusoidal: Quantity<"torqueConstantDc">;
};
export {};
