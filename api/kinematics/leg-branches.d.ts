import { Quantity } from '../units/index.js';
import type { LegJoint } from './leg.js';
import { type LegKernel } from './leg-kernel.js';
import { type LimitsSi } from './leg-nearest.js';
import type { PerJoint } from './vectors.js';
export interface LegBranch extends PerJoint<Quantity<'angle'>> {
    readonly kneeBend: 'forward' | 'backward' | 'straight' | 'folded';
    readonly foot: 'below' | 'above' | 'level';
    readonly freeJoints: readonly LegJoint[];
    readonly beyondLimits: readonly LegJoint[];
}
export declare function legBranches(leg: LegKernel, limits: LimitsSi, x: number, y: number, z: number): {
    readonly status: number;
    readonly branches: LegBranch[];
};
