export declare const threadStrip: import("../formula/formula.js").Formula<{
    readonly thread: {
        readonly fields: {
            readonly diameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly pitch: {
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
            readonly stressArea: {
                readonly kind: "area";
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
    readonly engagement: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly threadLength: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly partShearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly screwShearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly screwTensileStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly limits: {
        readonly oneOf: readonly ["basic", "worst"];
        readonly default: "worst";
    };
}, {
    readonly partAreaPerLength: "length";
    readonly screwAreaPerLength: "length";
    readonly usefulEngagement: "length";
    readonly partStripForce: "force";
    readonly screwStripForce: "force";
    readonly screwBreakForce: "force";
    readonly equalStrengthEngagement: "length";
    readonly governedBy: {
        readonly oneOf: readonly ["partThread", "screwThread", "screwTension"];
    };
}>;
export declare const insertBound: import("../formula/formula.js").Formula<{
    readonly knurlDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly shearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly share: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly calibrated: {
        readonly flag: true;
    };
    readonly bossDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly bossStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly preload: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly jacksOut: {
        readonly flag: true;
    };
}, {
    readonly pullOut: "force";
    readonly turnOut: "torque";
    readonly bossTension: "force";
    readonly preloadUse: "ratio";
    readonly evidence: {
        readonly oneOf: readonly ["calibrated", "uncalibrated"];
    };
    readonly state: {
        readonly oneOf: readonly ["holds", "jacksOutAtAssembly"];
    };
}>;
