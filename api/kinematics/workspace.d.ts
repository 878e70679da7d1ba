import { type Given } from '../formula/index.js';
import { Quantity } from '../units/index.js';
import type { ThreeJointLeg } from './leg.js';
export declare const workspaceVolume: import("../formula/formula.js").Formula<{
    readonly upperLink: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly lowerLink: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "volume">;
export declare const sagittalArea: import("../formula/formula.js").Formula<{
    readonly upperLink: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly lowerLink: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly hipRange: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "1 turn";
    };
    readonly kneeFrom: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "180 deg";
    };
    readonly kneeTo: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "180 deg";
    };
}, "area">;
export declare const limitedWorkspaceVolume: import("../formula/formula.js").Formula<{
    readonly upperLink: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly lowerLink: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly abductionRange: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "1 turn";
    };
    readonly hipFrom: {
        readonly kind: "angle";
        readonly min: "-180 deg";
        readonly max: "180 deg";
    };
    readonly hipTo: {
        readonly kind: "angle";
        readonly min: "-180 deg";
        readonly max: "180 deg";
    };
    readonly kneeFrom: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "180 deg";
    };
    readonly kneeTo: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "180 deg";
    };
}, "volume">;
declare const SECTION: {
    readonly y: "length";
    readonly x: {
        readonly fields: {
            readonly lowest: "length";
            readonly highest: "length";
        };
    };
    readonly z: {
        readonly fields: {
            readonly lowest: "length";
            readonly highest: "length";
        };
    };
    readonly step: {
        readonly kind: "length";
        readonly above: 0;
    };
};
export declare const OUT_OF_REACH = 0;
export declare const BEYOND_LIMITS = 1;
export declare const REACHABLE = 2;
export interface WorkspaceSection {
    readonly x: Float64Array;
    readonly z: Float64Array;
    readonly flags: Uint8Array;
    readonly branches: Uint8Array;
    readonly overlapping: number;
    readonly area: Quantity<'area'>;
}
export declare function workspaceSection(leg: ThreeJointLeg, given: Given<typeof SECTION>): WorkspaceSection;
export interface StepBox {
    readonly sweep: Quantity<'length'>;
    readonly lift: Quantity<'length'>;
    readonly x: {
        readonly lowest: Quantity<'length'>;
        readonly highest: Quantity<'length'>;
    };
    readonly z: {
        readonly lowest: Quantity<'length'>;
        readonly highest: Quantity<'length'>;
    };
    readonly branch: number;
}
export declare function largestStepBox(section: WorkspaceSection, given?: {
    readonly leastLift?: Given<{
        l: 'length';
    }>['l'];
}): StepBox | undefined;
export declare function legPlaneOutlineSi(leg: ThreeJointLeg, pointsPerEdge?: number): (readonly [number, number])[];
export declare function workspaceOverlaps(leg: ThreeJointLeg): {
    readonly overlaps: boolean;
    readonly because: readonly ('kneeBothWays' | 'footAboveHip' | 'abductionBeyondTurn')[];
};
export {};
