export declare const GRAVITY = 9.80665;
export declare const ATMOSPHERE = 101325;
export declare const airProperties: import("../formula/formula.js").Formula<{
    readonly temperature: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "400 degC";
    };
    readonly pressure: {
        readonly kind: "stress";
        readonly above: 0;
        readonly default: "101325 Pa";
    };
}, {
    readonly conductivity: "thermalConductivity";
    readonly viscosity: "kinematicViscosity";
    readonly prandtl: "ratio";
    readonly density: "density";
}>;
export declare const pressureAtAltitude: import("../formula/formula.js").Formula<{
    readonly altitude: {
        readonly kind: "length";
        readonly min: "-500 m";
        readonly max: "11 km";
    };
}, "stress">;
export declare const rayleighNumber: import("../formula/formula.js").Formula<{
    readonly surface: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "600 degC";
    };
    readonly air: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "200 degC";
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pressure: {
        readonly kind: "stress";
        readonly above: 0;
        readonly default: "101325 Pa";
    };
}, {
    readonly rayleigh: "ratio";
    readonly prandtl: "ratio";
    readonly conductivity: "thermalConductivity";
    readonly viscosity: "kinematicViscosity";
}>;
