export declare const bearingDuty: import("../formula/formula.js").Formula<{
    readonly load: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly speed: {
        readonly kind: "angularVelocity";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly limit: {
        readonly kind: "pressureVelocity";
        readonly above: 0;
    };
}, {
    readonly pressure: "stress";
    readonly velocity: "velocity";
    readonly duty: "pressureVelocity";
    readonly utilisation: "ratio";
    readonly torque: "torque";
    readonly heat: "power";
    readonly state: {
        readonly oneOf: readonly ["within", "exceeded"];
    };
}>;
export declare const wearDepth: import("../formula/formula.js").Formula<{
    readonly specificWearRate: {
        readonly kind: "specificWearRate";
        readonly min: 0;
    };
    readonly pressure: {
        readonly kind: "stress";
        readonly min: 0;
    };
    readonly distance: {
        readonly kind: "length";
        readonly min: 0;
    };
}, "length">;
export declare const runningClearance: import("../formula/formula.js").Formula<{
    readonly madeClearance: "length";
    readonly shaftDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly outerDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly poissonRatio: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 0.5;
    };
    readonly bushingExpansion: {
        readonly kind: "thermalExpansion";
        readonly min: 0;
    };
    readonly bushingRise: "temperatureDifference";
    readonly shaftExpansion: {
        readonly kind: "thermalExpansion";
        readonly min: 0;
    };
    readonly shaftRise: "temperatureDifference";
    readonly water: {
        readonly kind: "ratio";
        readonly default: 0;
    };
    readonly swelling: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly default: 0;
    };
    readonly housingStrain: {
        readonly kind: "strain";
        readonly default: "0 %";
    };
    readonly mounting: {
        readonly oneOf: readonly ["held", "free"];
    };
}, {
    readonly clearance: "length";
    readonly boreChange: "length";
    readonly shaftChange: "length";
    readonly state: {
        readonly oneOf: readonly ["runs", "seizes"];
    };
}>;
