import { type In, Quantity } from '../units/index.js';
import { type TimeToLimit } from './duty.js';
import { type PartLimit, type Verdict } from './limits.js';
import type { MotorMount } from './mount.js';
import type { Temperatures } from './network.js';
export interface TorqueLimit {
    readonly state: 'found' | 'tooHot';
    readonly torque: Quantity<'torque'>;
    readonly low: Quantity<'torque'>;
    readonly high: Quantity<'torque'>;
    readonly governs: string;
    readonly temperatures: Readonly<Record<string, Quantity<'temperature'>>>;
}
export declare function continuousTorque(mount: MotorMount, limits: readonly PartLimit[], options?: {
    readonly speed?: In<'angularVelocity'>;
}): TorqueLimit;
export declare function intermittentTorque(mount: MotorMount, limits: readonly PartLimit[], duty: {
    readonly dutyFactor: In<'ratio'>;
    readonly period?: In<'time'>;
    readonly speed?: In<'angularVelocity'>;
}): TorqueLimit;
export declare function timeAtTorque(mount: MotorMount, load: {
    readonly torque: In<'torque'>;
    readonly speed?: In<'angularVelocity'>;
}, limits: readonly PartLimit[], initial?: Readonly<Record<string, In<'temperature'>>> | In<'temperature'>): TimeToLimit & {
    readonly governs: string | undefined;
};
export interface MountVerdict extends Verdict {
    readonly state: 'steady' | 'runaway';
    readonly temperatures: Temperatures;
    readonly hottestPhase: Quantity<'temperature'> | undefined;
}
export declare function assessMount(mount: MotorMount, load: {
    readonly torque: In<'torque'>;
    readonly speed?: In<'angularVelocity'>;
}, limits: readonly PartLimit[]): MountVerdict;
