import { type FootErrorLine, type Vector3 } from '../kinematics/index.js';
import { Quantity } from '../units/index.js';
import { type Joint, type Prepared } from './numbers.js';
export interface FootResult {
    readonly error: {
        readonly lines: readonly FootErrorLine[];
        readonly together: FootErrorLine;
    };
    readonly stiffness: Vector3<'linearStiffness'> | undefined;
    readonly deflection: Vector3<'length'> | undefined;
    readonly shares: {
        readonly drives: Vector3<'linearCompliance'>;
        readonly links: Vector3<'linearCompliance'>;
    } | undefined;
    readonly resonance: {
        readonly [J in Joint]: {
            readonly motorLocked: Quantity<'frequency'>;
            readonly motorFree: Quantity<'frequency'>;
        };
    };
    readonly usableBandwidth: Quantity<'frequency'>;
}
export declare function footResult(leg: Prepared): FootResult;
