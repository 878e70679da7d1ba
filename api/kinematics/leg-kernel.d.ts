export declare const REACHED = 0;
export declare const TOO_FAR = 1;
export declare const TOO_NEAR = 2;
export declare const INSIDE_OFFSET = 3;
export declare const KNEE_BACKWARD = 1;
export declare const FOOT_ABOVE = 2;
export declare class LegKernel {
    readonly hipOffset: number;
    readonly upperLink: number;
    readonly lowerLink: number;
    readonly slack: number;
    private readonly offsetSquared;
    private readonly farthest;
    private readonly nearest;
    private readonly squares;
    private readonly upperTwice;
    constructor(hipOffset: number, upperLink: number, lowerLink: number);
    footInto(out: Float64Array, offset: number, q1: number, q2: number, q3: number): void;
    jointsInto(out: Float64Array, offset: number, q1: number, q2: number, q3: number): void;
    jointAnglesInto(out: Float64Array, offset: number, x: number, y: number, z: number, branch: number): number;
    jacobianInto(out: Float64Array, offset: number, q1: number, q2: number, q3: number): void;
    torqueFromFootPushInto(out: Float64Array, offset: number, q1: number, q2: number, q3: number, fx: number, fy: number, fz: number): void;
    stateInto(out: Float64Array, offset: number, q1: number, q2: number, q3: number, fx: number, fy: number, fz: number): void;
}
