export declare const drumNeckStress: import("../formula/formula.js").Formula<{
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly sidePull: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly arm: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly outerDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly boreDiameter: {
        readonly kind: "length";
        readonly min: 0;
    };
}, {
    readonly torsionStress: "stress";
    readonly bendingStress: "stress";
    readonly equivalentStress: "stress";
}>;
export declare const grooveWedging: import("../formula/formula.js").Formula<{
    readonly tension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly wrapAngle: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly grooveAngle: {
        readonly kind: "angle";
        readonly above: 0;
        readonly max: "180 deg";
    };
}, "force">;
export declare const layerSplitting: import("../formula/formula.js").Formula<{
    readonly bendingMoment: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly axialForce: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly outerDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly boreDiameter: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly allowableAcrossLayers: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly holeShare: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly below: 1;
        readonly default: 0;
    };
}, {
    readonly layerStress: "stress";
    readonly clampToStayClosed: "force";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly state: {
        readonly oneOf: readonly ["closed", "heldByBond", "splits"];
    };
}>;
export declare const anchorPull: import("../formula/formula.js").Formula<{
    readonly spanTension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly storedTension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly wrapAngle: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, "force">;
