export declare const SWING_SHAPES: readonly ["cycloid", "cubic", "quintic", "matched"];
export type SwingShape = (typeof SWING_SHAPES)[number];
export declare const restToRestPeaks: import("../formula/formula.js").Formula<{
    readonly distance: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly time: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly shape: {
        readonly oneOf: readonly ["cycloid", "cubic", "quintic"];
    };
}, {
    readonly peakSpeed: "velocity";
    readonly peakAcceleration: "acceleration";
}>;
export declare const matchedSwingPeaks: import("../formula/formula.js").Formula<{
    readonly stride: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly swingTime: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly bodySpeed: {
        readonly kind: "velocity";
        readonly min: 0;
    };
}, {
    readonly peakSpeed: "velocity";
    readonly peakAcceleration: "acceleration";
}>;
export declare function swingShapeInto(out: Float64Array, offset: number, shape: SwingShape, u: number): void;
export declare const LIFT_SHAPES: readonly ["cosine", "smooth"];
export type LiftShape = (typeof LIFT_SHAPES)[number];
export declare function liftShapeInto(out: Float64Array, offset: number, shape: LiftShape, u: number): void;
export declare function bezierInto(out: Float64Array, offset: number, points: ArrayLike<number>, u: number, work: Float64Array): void;
