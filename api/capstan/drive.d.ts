import { type In, Quantity } from '../units/index.js';
import type { DriveState } from './branch.js';
import { type LoadHistory, type TravelResult } from './drive-histories.js';
import { type CycleLosses, type LossCycle } from './drive-losses.js';
import { type AtFriction, type DriveLimits, type Windup } from './drive-results.js';
import { type DriveSpecification } from './drive-specification.js';
export interface Drive {
    readonly ratio: Quantity<'ratio'>;
    readonly span: Quantity<'length'>;
    readonly pinionWrap: Quantity<'angle'>;
    readonly si: AtFriction<DriveState>;
    limits(): AtFriction<DriveLimits>;
    windup(torque: In<'torque'>): AtFriction<Windup>;
    path(history: {
        readonly torques: readonly In<'torque'>[];
    } | {
        readonly angles: readonly In<'angle'>[];
    }): AtFriction<LoadHistory>;
    losses(cycle: LossCycle): AtFriction<CycleLosses>;
    travel(cycle: {
        readonly steps: readonly {
            readonly jointAngle: In<'angle'>;
            readonly torque: In<'torque'>;
        }[] | readonly {
            readonly pinionAngle: In<'angle'>;
            readonly torque: In<'torque'>;
        }[];
        readonly cycles: number;
        readonly resolution?: In<'angle'> | undefined;
    }): AtFriction<TravelResult>;
}
export declare function drive(given: DriveSpecification): Drive;
