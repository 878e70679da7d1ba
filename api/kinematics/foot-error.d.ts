import { type Given } from '../formula/index.js';
import { Quantity } from '../units/index.js';
import type { DriveCoupling } from './coupling.js';
import type { GivenAngles, ThreeJointLeg } from './leg.js';
import { type Vector3 } from './vectors.js';
export interface AngleErrorSource {
    readonly name: string;
    readonly at: 'joint' | 'actuator';
    readonly abduction: Given<{
        x: 'angle';
    }>['x'];
    readonly hip: Given<{
        x: 'angle';
    }>['x'];
    readonly knee: Given<{
        x: 'angle';
    }>['x'];
}
export interface FootErrorLine {
    readonly name: string;
    readonly worstPerAxis: Vector3<'length'>;
    readonly worstCorner: Quantity<'length'>;
    readonly rssPerAxis: Vector3<'length'>;
    readonly rss: Quantity<'length'>;
}
export interface FootError {
    readonly lines: readonly FootErrorLine[];
    readonly together: FootErrorLine;
    readonly covarianceSi: Float64Array;
}
export declare function footError(leg: ThreeJointLeg, given: {
    readonly angles: GivenAngles;
    readonly sources: readonly AngleErrorSource[];
    readonly coupling?: DriveCoupling;
}): FootError;
