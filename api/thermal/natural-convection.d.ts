export declare const nusseltVerticalPlate: import("../formula/formula.js").Formula<{
    readonly rayleigh: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly prandtl: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, "ratio">;
export declare const nusseltVerticalPlateLaminar: import("../formula/formula.js").Formula<{
    readonly rayleigh: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly prandtl: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, "ratio">;
export declare const nusseltHorizontalCylinder: import("../formula/formula.js").Formula<{
    readonly rayleigh: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly prandtl: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, "ratio">;
export declare const nusseltPlateUp: import("../formula/formula.js").Formula<{
    readonly rayleigh: {
        readonly kind: "ratio";
        readonly min: 0;
    };
}, "ratio">;
export declare const nusseltPlateDown: import("../formula/formula.js").Formula<{
    readonly rayleigh: {
        readonly kind: "ratio";
        readonly min: 0;
    };
}, "ratio">;
export declare const naturalConvection: import("../formula/formula.js").Formula<{
    readonly surface: {
        readonly oneOf: readonly ["verticalPlate", "horizontalCylinder", "plateUp", "plateDown", "tiltedPlate"];
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
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
    readonly tilt: {
        readonly kind: "angle";
        readonly min: 0;
        readonly max: "90 deg";
        readonly default: "0 deg";
    };
}, {
    readonly coefficient: "heatTransferCoefficient";
    readonly nusselt: "ratio";
    readonly rayleigh: "ratio";
}>;
