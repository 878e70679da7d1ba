export declare const ringOnPlate: import("../formula/formula.js").Formula<{
    readonly innerRadius: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly outerRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly plateRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly conductivity: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
    readonly motorFaceCoefficient: {
        readonly kind: "heatTransferCoefficient";
        readonly min: 0;
    };
    readonly freeFaceCoefficient: {
        readonly kind: "heatTransferCoefficient";
        readonly above: 0;
    };
    readonly underMotor: {
        readonly oneOf: readonly ["covered", "open"];
        readonly default: "covered";
    };
}, {
    readonly ring: "thermalResistance";
    readonly uniform: "thermalResistance";
    readonly spreading: "thermalResistance";
}>;
