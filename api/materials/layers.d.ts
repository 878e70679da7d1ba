export declare const layerStress: import("../formula/formula.js").Formula<{
    readonly xx: "stress";
    readonly yy: "stress";
    readonly zz: "stress";
    readonly xy: "stress";
    readonly yz: "stress";
    readonly zx: "stress";
    readonly buildDirection: {
        readonly list: "ratio";
        readonly least: 3;
    };
}, {
    readonly normal: "stress";
    readonly shear: "stress";
    readonly inPlaneLargest: "stress";
    readonly inPlaneSmallest: "stress";
}>;
export declare const interlayerUtilisation: import("../formula/formula.js").Formula<{
    readonly normal: "stress";
    readonly shear: {
        readonly kind: "stress";
        readonly min: 0;
    };
    readonly acrossStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly shearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, {
    readonly utilisation: "ratio";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly state: {
        readonly oneOf: readonly ["holds", "separates"];
    };
}>;
export declare const builtAtAngle: import("../formula/formula.js").Formula<{
    readonly stress: "stress";
    readonly angle: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "90 deg";
    };
    readonly alongStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly acrossStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly shearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, {
    readonly normal: "stress";
    readonly shear: "stress";
    readonly utilisation: "ratio";
    readonly governs: {
        readonly oneOf: readonly ["withinLayers", "betweenLayers"];
    };
}>;
