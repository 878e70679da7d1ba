export declare const layerResistance: import("../formula/formula.js").Formula<{
    readonly thickness: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly conductivity: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
    readonly area: {
        readonly kind: "area";
        readonly above: 0;
    };
}, "thermalResistance">;
export declare const shellResistance: import("../formula/formula.js").Formula<{
    readonly innerRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly outerRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly conductivity: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
}, "thermalResistance">;
export declare const surfaceResistance: import("../formula/formula.js").Formula<{
    readonly coefficient: {
        readonly kind: "heatTransferCoefficient";
        readonly above: 0;
    };
    readonly area: {
        readonly kind: "area";
        readonly above: 0;
    };
}, "thermalResistance">;
export declare const ringArea: import("../formula/formula.js").Formula<{
    readonly innerRadius: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly outerRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "area">;
export declare const contactConductance: import("../formula/formula.js").Formula<{
    readonly conductivity1: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
    readonly conductivity2: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
    readonly roughness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly slope: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly pressure: {
        readonly kind: "stress";
        readonly min: 0;
    };
    readonly hardness: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly gapConductivity: {
        readonly kind: "thermalConductivity";
        readonly min: 0;
        readonly default: "0 W/(m K)";
    };
    readonly gapThickness: {
        readonly kind: "length";
        readonly above: 0;
        readonly optional: true;
    };
}, {
    readonly solid: "heatTransferCoefficient";
    readonly gap: "heatTransferCoefficient";
    readonly total: "heatTransferCoefficient";
}>;
export declare const biotNumber: import("../formula/formula.js").Formula<{
    readonly coefficient: {
        readonly kind: "heatTransferCoefficient";
        readonly min: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly conductivity: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
}, {
    readonly biot: "ratio";
    readonly state: {
        readonly oneOf: readonly ["lumped", "distributed"];
    };
}>;
