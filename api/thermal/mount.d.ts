import { type In, type Quantity as Q } from '../units/index.js';
import { type Motor } from './motor.js';
import { type MountNumbers, type MountSpecification } from './mount-specification.js';
import { type Network } from './network.js';
import { type SurroundingsNumbers } from './surface.js';
export interface MotorLoad {
    readonly torque: In<'torque'>;
    readonly speed?: In<'angularVelocity'> | undefined;
}
export interface MotorMount {
    network(load: MotorLoad): Network;
    readonly mass: Q<'mass'>;
    readonly motor: Motor;
    readonly specification: MountSpecification;
    scaled(factors: Parameters<Network['scaled']>[0]): MotorMount;
    readonly si: {
        readonly x: MountNumbers;
        readonly surroundings: SurroundingsNumbers;
        network(torque: number, speed: number): Network;
    };
}
export declare function motorMount(machine: Motor, specification: MountSpecification): MotorMount;
