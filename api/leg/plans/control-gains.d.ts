import { Quantity } from '../../units/index.js';
export interface Gains {
    readonly bandwidth: Quantity<'frequency'>;
    readonly limitedBy: string;
    readonly motorLocked: Quantity<'frequency'>;
    readonly motorFree: Quantity<'frequency'>;
    readonly inertia: Quantity<'momentOfInertia'>;
    readonly stiffness: Quantity<'torsionalStiffness'>;
    readonly damping: Quantity<'torsionalDamping'>;
    readonly motorStiffness: Quantity<'torsionalStiffness'>;
    readonly motorDamping: Quantity<'torsionalDamping'>;
    readonly ripple: Quantity<'torque'>;
    readonly reasoning: readonly string[];
}
export interface GravityTerms {
    readonly thigh: Quantity<'torque'>;
    readonly shank: Quantity<'torque'>;
}
