export declare const bestFinSpacing: import("../formula/formula.js").Formula<{
    readonly height: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly surfaceTemperature: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "400 degC";
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
    readonly spacing: "length";
    readonly coefficient: "heatTransferCoefficient";
    readonly rayleigh: "ratio";
}>;
export declare const plateFinSink: import("../formula/formula.js").Formula<{
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly height: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly finLength: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly finThickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly fins: {
        readonly kind: "count";
        readonly min: 2;
        readonly whole: true;
    };
    readonly conductivity: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
    readonly surfaceTemperature: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "400 degC";
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
    readonly spacing: "length";
    readonly coefficient: "heatTransferCoefficient";
    readonly efficiency: "ratio";
    readonly finArea: "area";
    readonly conductance: "thermalConductance";
    readonly heat: "power";
}>;
export declare const finCount: import("../formula/formula.js").Formula<{
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly spacing: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
}, "count">;
