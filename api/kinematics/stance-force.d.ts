export declare const stanceForce: import("../formula/formula.js").Formula<{
    readonly mass: {
        readonly kind: "mass";
        readonly above: 0;
    };
    readonly legShare: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly dutyFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly stancePhase: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly shape: {
        readonly oneOf: readonly ["halfSine", "parabolic", "rectangular", "twoPeaked"];
        readonly default: "halfSine";
    };
    readonly thirdHarmonic: {
        readonly kind: "ratio";
        readonly min: -0.3333;
        readonly max: 1;
        readonly default: 0.4;
    };
    readonly gravity: {
        readonly kind: "acceleration";
        readonly above: 0;
        readonly default: "9.80665 m/s^2";
    };
}, "force">;
export declare const peakForceOfPair: import("../formula/formula.js").Formula<{
    readonly mass: {
        readonly kind: "mass";
        readonly above: 0;
    };
    readonly pairShare: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly dutyFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly gravity: {
        readonly kind: "acceleration";
        readonly above: 0;
        readonly default: "9.80665 m/s^2";
    };
}, "force">;
