import { type Given } from '../formula/index.js';
import { type Quantity as Q } from '../units/index.js';
import { torqueConstants } from './motor-constants.js';
declare const MOTOR: {
    readonly speedConstant: {
        readonly kind: "speedConstant";
        readonly above: 0;
        readonly optional: true;
    };
    readonly speedConstantBasis: {
        readonly oneOf: readonly ["spunPeakLineToLine", "noLoadSixStep", "catalogue"];
        readonly optional: true;
    };
    readonly backEmfConstant: {
        readonly kind: "backEmfConstant";
        readonly above: 0;
        readonly optional: true;
    };
    readonly torqueConstantPeakPhase: {
        readonly kind: "torqueConstantPeakPhase";
        readonly above: 0;
        readonly optional: true;
    };
    readonly torqueConstantRmsPhase: {
        readonly kind: "torqueConstantRmsPhase";
        readonly above: 0;
        readonly optional: true;
    };
    readonly torqueConstantPowerInvariant: {
        readonly kind: "torqueConstantPowerInvariant";
        readonly above: 0;
        readonly optional: true;
    };
    readonly torqueConstantDc: {
        readonly kind: "torqueConstantDc";
        readonly above: 0;
        readonly optional: true;
    };
    readonly terminalResistance: {
        readonly kind: "electricalResistance";
        readonly above: 0;
    };
    readonly resistanceAt: {
        readonly kind: "temperature";
        readonly min: "-40 degC";
        readonly max: "150 degC";
        readonly default: "20 degC";
    };
    readonly noLoad: {
        readonly list: {
            readonly fields: {
                readonly voltage: {
                    readonly kind: "voltage";
                    readonly above: 0;
                };
                readonly current: {
                    readonly kind: "current";
                    readonly above: 0;
                };
                readonly speed: {
                    readonly kind: "angularVelocity";
                    readonly above: 0;
                };
            };
        };
        readonly optional: true;
    };
    readonly inertia: {
        readonly kind: "momentOfInertia";
        readonly min: 0;
        readonly optional: true;
    };
    readonly polePairs: {
        readonly kind: "count";
        readonly min: 1;
        readonly whole: true;
        readonly default: 1;
    };
    readonly phaseInductance: {
        readonly kind: "inductance";
        readonly min: 0;
        readonly default: "0 H";
    };
    readonly magnetCoefficient: {
        readonly kind: "temperatureCoefficient";
        readonly max: 0;
        readonly above: "-0.2 %/K";
        readonly default: "-0.11 %/K";
    };
};
export type MotorSpecification = Given<typeof MOTOR>;
export interface MotorNumbers {
    readonly backEmfConstant: number;
    readonly backEmfScatter: number;
    readonly terminalResistance: number;
    readonly magnetCoefficient: number;
    readonly constantDrag: number;
    readonly viscousDrag: number;
    readonly polePairs: number;
    readonly phaseInductance: number;
    readonly inertia: number | undefined;
}
export interface Motor {
    readonly backEmfConstant: Q<'backEmfConstant'>;
    readonly terminalResistance: Q<'electricalResistance'>;
    readonly motorConstant: Q<'motorConstant'>;
    readonly torqueConstants: ReturnType<typeof torqueConstants>;
    readonly inertia: Q<'momentOfInertia'> | undefined;
    readonly si: MotorNumbers;
}
export declare function motor(given: MotorSpecification): Motor;
export declare const backEmfAt: (m: MotorNumbers, magnets: number) => number;
export declare const resistanceAt: (m: MotorNumbers, winding: number) => number;
export declare const copperLossAt: (m: MotorNumbers, torque: number, winding: number, magnets: number) => number;
export declare const peakCurrentAt: (m: MotorNumbers, torque: number, magnets: number) => number;
export declare const dragLossAt: (m: MotorNumbers, speed: number) => number;
export interface TorqueSpeedPoint {
    readonly torque: Q<'torque'>;
    readonly speed: Q<'angularVelocity'>;
    readonly voltage: Q<'voltage'>;
    readonly power: Q<'power'>;
    readonly state: 'turns' | 'stalled' | 'brownOut';
}
declare const SUPPLY: {
    readonly voltage: {
        readonly kind: "voltage";
        readonly above: 0;
    };
    readonly resistance: {
        readonly kind: "electricalResistance";
        readonly min: 0;
        readonly default: "0 ohm";
    };
    readonly winding: {
        readonly kind: "temperature";
        readonly default: "20 degC";
    };
    readonly magnets: {
        readonly kind: "temperature";
        readonly default: "20 degC";
    };
};
export type SupplySpecification = Given<typeof SUPPLY>;
export declare function torqueSpeedLimit(machine: Motor, torques: readonly Q<'torque'>[], supply: SupplySpecification): TorqueSpeedPoint[];
export declare function torqueSpeedAt(m: MotorNumbers, torque: number, supply: {
    readonly voltage: number;
    readonly resistance: number;
    readonly winding: number;
    readonly magnets: number;
}): {
    speed: number;
    voltage: number;
    power: number;
    state: TorqueSpeedPoint['state'];
};
export {};
