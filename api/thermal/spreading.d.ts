export declare const ringSpreading: import("../formula/formula.js").Formula<{
    readonly innerRadius: {
        readonly kind: "length";
        readonly min: 0;
        readonly default: "0 mm";
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
    readonly coefficient: {
        readonly kind: "heatTransferCoefficient";
        readonly above: 0;
    };
}, {
    readonly spreading: "thermalResistance";
    readonly oneDimensional: "thermalResistance";
    readonly total: "thermalResistance";
}>;
export declare const discSpreading: import("../formula/formula.js").Formula<{
    readonly sourceRatio: {
        readonly kind: "ratio";
        readonly min: 0.01;
        readonly max: 1;
    };
    readonly thicknessRatio: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly biot: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, {
    readonly mean: "ratio";
    readonly centre: "ratio";
}>;
export declare const discSpreadingEstimate: import("../formula/formula.js").Formula<{
    readonly sourceRatio: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly thicknessRatio: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly biot: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, {
    readonly mean: "ratio";
    readonly peak: "ratio";
}>;
export declare const halfSpaceSpreading: import("../formula/formula.js").Formula<{
    readonly radius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly conductivity: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
}, {
    readonly isothermal: "thermalResistance";
    readonly isofluxMean: "thermalResistance";
    readonly isofluxCentre: "thermalResistance";
}>;
