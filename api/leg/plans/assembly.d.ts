import { type In } from '../../units/index.js';
import type { Leg } from '../specification/describe.js';
import { type Assumed } from './bench.js';
import { type CutList } from './cut-list.js';
import { type BondStep, type PressStep, type TighteningStep } from './fastening-steps.js';
import { type TensionerSetting, type Winding } from './tensioning.js';
export interface AssemblyOptions {
    readonly tail?: In<'length'>;
    readonly beddingStrain?: In<'strain'>;
}
export interface FollowUp {
    readonly when: 'after a day' | 'after a week';
    readonly what: string;
    readonly expect: string;
}
export interface AssemblyPlan {
    readonly leg: Leg;
    readonly cautions: readonly string[];
    readonly assumed: readonly Assumed[];
    readonly cuts: CutList;
    readonly windings: readonly Winding[];
    readonly tensioners: readonly TensionerSetting[];
    readonly tightening: readonly TighteningStep[];
    readonly presses: readonly PressStep[];
    readonly bonds: readonly BondStep[];
    readonly steps: readonly string[];
    readonly followUps: readonly FollowUp[];
    readonly problems: readonly string[];
}
export declare function assemblyPlan(leg: Leg, options?: AssemblyOptions): AssemblyPlan;
