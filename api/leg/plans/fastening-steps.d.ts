import { Quantity } from '../../units/index.js';
import { type Joint } from '../numbers.js';
export interface TighteningStep {
    readonly what: string;
    readonly thread: string;
    readonly count: number;
    readonly torque: Quantity<'torque'>;
    readonly passes: readonly Quantity<'torque'>[];
    readonly preload: Quantity<'force'>;
    readonly afterDay: Quantity<'ratio'> | undefined;
    readonly afterWeek: Quantity<'ratio'> | undefined;
    readonly remark: string;
}
export interface PressStep {
    readonly joint: Joint;
    readonly pin: string;
    readonly hole: Quantity<'length'>;
    readonly interference: Quantity<'length'>;
    readonly pressingForce: Quantity<'force'>;
    readonly boreHoopStress: Quantity<'stress'>;
}
export interface BondStep {
    readonly joint: Joint;
    readonly adhesive: string;
    readonly bondedLength: Quantity<'length'>;
    readonly gap: Quantity<'length'>;
    readonly mechanicalLock: boolean;
}
