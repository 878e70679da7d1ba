export declare const straightFin: import("../formula/formula.js").Formula<{
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly width: {
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
    readonly efficiency: "ratio";
    readonly area: "area";
    readonly conductance: "thermalConductance";
}>;
export declare const barFin: import("../formula/formula.js").Formula<{
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly perimeter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly section: {
        readonly kind: "area";
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
    readonly efficiency: "ratio";
    readonly conductance: "thermalConductance";
}>;
export declare const annularFin: import("../formula/formula.js").Formula<{
    readonly innerRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly outerRadius: {
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
    readonly efficiency: "ratio";
    readonly area: "area";
    readonly conductance: "thermalConductance";
}>;
