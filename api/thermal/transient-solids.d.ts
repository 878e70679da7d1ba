export declare const thermalDiffusivity: import("../formula/formula.js").Formula<{
    readonly conductivity: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
    readonly density: {
        readonly kind: "density";
        readonly above: 0;
    };
    readonly specificHeat: {
        readonly kind: "specificHeat";
        readonly above: 0;
    };
}, "thermalDiffusivity">;
export declare const thickBodyStep: import("../formula/formula.js").Formula<{
    readonly initial: "temperature";
    readonly surface: "temperature";
    readonly depth: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly time: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly diffusivity: {
        readonly kind: "thermalDiffusivity";
        readonly above: 0;
    };
}, "temperature">;
export declare const thickBodyFlux: import("../formula/formula.js").Formula<{
    readonly flux: {
        readonly kind: "heatFlux";
        readonly min: 0;
    };
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly conductivity: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
    readonly diffusivity: {
        readonly kind: "thermalDiffusivity";
        readonly above: 0;
    };
}, "temperatureDifference">;
export declare const lumpedResponse: import("../formula/formula.js").Formula<{
    readonly initial: "temperature";
    readonly final: "temperature";
    readonly heatCapacity: {
        readonly kind: "heatCapacity";
        readonly above: 0;
    };
    readonly thermalResistance: {
        readonly kind: "thermalResistance";
        readonly above: 0;
    };
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
}, {
    readonly temperature: "temperature";
    readonly timeConstant: "time";
    readonly done: "ratio";
}>;
export declare const wallResponse: import("../formula/formula.js").Formula<{
    readonly biot: {
        readonly kind: "ratio";
        readonly min: 0.000001;
    };
    readonly fourier: {
        readonly kind: "ratio";
        readonly min: 0;
    };
}, {
    readonly middle: "ratio";
    readonly surface: "ratio";
    readonly eigenvalue: "ratio";
    readonly coefficient: "ratio";
}>;
export declare const shortTimeOverload: import("../formula/formula.js").Formula<{
    readonly loadTime: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly timeConstant: {
        readonly kind: "time";
        readonly above: 0;
    };
}, {
    readonly loss: "ratio";
    readonly torque: "ratio";
}>;
export declare const intermittentOverload: import("../formula/formula.js").Formula<{
    readonly loadTime: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly period: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly timeConstant: {
        readonly kind: "time";
        readonly above: 0;
    };
}, {
    readonly loss: "ratio";
    readonly torque: "ratio";
}>;
