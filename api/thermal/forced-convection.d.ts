export declare const nusseltFlatPlate: import("../formula/formula.js").Formula<{
    readonly reynolds: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly prandtl: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, {
    readonly mean: "ratio";
    readonly trailingEdge: "ratio";
}>;
export declare const nusseltCylinderCrossflow: import("../formula/formula.js").Formula<{
    readonly reynolds: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly prandtl: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, "ratio">;
export declare const forcedConvection: import("../formula/formula.js").Formula<{
    readonly surface: {
        readonly oneOf: readonly ["flatPlate", "cylinder"];
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly speed: {
        readonly kind: "velocity";
        readonly min: 0;
    };
    readonly surfaceTemperature: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "600 degC";
    };
    readonly airTemperature: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "200 degC";
    };
    readonly pressure: {
        readonly kind: "stress";
        readonly above: 0;
        readonly default: "101325 Pa";
    };
}, {
    readonly coefficient: "heatTransferCoefficient";
    readonly nusselt: "ratio";
    readonly reynolds: "ratio";
}>;
export declare const mixedConvection: import("../formula/formula.js").Formula<{
    readonly forced: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly natural: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly direction: {
        readonly oneOf: readonly ["assisting", "opposing"];
    };
}, "ratio">;
export declare const nusseltRotatingCylinder: import("../formula/formula.js").Formula<{
    readonly reynolds: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly prandtl: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, "ratio">;
