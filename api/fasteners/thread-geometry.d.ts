export declare const threadGeometry: import("../formula/formula.js").Formula<{
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pitch: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly pitchDiameter: "length";
    readonly minorDiameter: "length";
    readonly rootDiameter: "length";
    readonly stressArea: "area";
    readonly rootArea: "area";
    readonly leadAngle: "angle";
}>;
export declare const threadLimits: import("../formula/formula.js").Formula<{
    readonly thread: {
        readonly fields: {
            readonly diameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly pitchDiameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly minorDiameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly allowance: {
                readonly kind: "length";
                readonly min: 0;
            };
            readonly screwMajorTolerance: {
                readonly kind: "length";
                readonly min: 0;
            };
            readonly screwPitchTolerance: {
                readonly kind: "length";
                readonly min: 0;
            };
            readonly nutPitchTolerance: {
                readonly kind: "length";
                readonly min: 0;
            };
            readonly nutMinorTolerance: {
                readonly kind: "length";
                readonly min: 0;
            };
        };
    };
}, {
    readonly screwMajorLargest: "length";
    readonly screwMajorSmallest: "length";
    readonly screwPitchLargest: "length";
    readonly screwPitchSmallest: "length";
    readonly nutPitchLargest: "length";
    readonly nutMinorLargest: "length";
}>;
