export declare const bridgeConductionLoss: import("../formula/formula.js").Formula<{
    readonly peakPhaseCurrent: "peakPhaseCurrent";
    readonly switchResistance: {
        readonly kind: "electricalResistance";
        readonly min: 0;
    };
    readonly junctionTemperature: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "200 degC";
        readonly default: "25 degC";
    };
    readonly resistanceCoefficient: {
        readonly kind: "temperatureCoefficient";
        readonly min: 0;
        readonly default: "0.5 %/K";
    };
}, "power">;
export declare const bridgeSwitchingLoss: import("../formula/formula.js").Formula<{
    readonly peakPhaseCurrent: {
        readonly kind: "peakPhaseCurrent";
        readonly min: 0;
    };
    readonly voltage: {
        readonly kind: "voltage";
        readonly min: 0;
    };
    readonly frequency: {
        readonly kind: "frequency";
        readonly min: 0;
    };
    readonly riseTime: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly fallTime: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly deadTime: {
        readonly kind: "time";
        readonly min: 0;
        readonly default: "0 s";
    };
    readonly diodeVoltage: {
        readonly kind: "voltage";
        readonly min: 0;
        readonly default: "0.8 V";
    };
    readonly gateCharge: {
        readonly kind: "charge";
        readonly min: 0;
        readonly default: "0 C";
    };
    readonly gateVoltage: {
        readonly kind: "voltage";
        readonly min: 0;
        readonly default: "10 V";
    };
    readonly rotor: {
        readonly oneOf: readonly ["turning", "still"];
        readonly default: "turning";
    };
}, {
    readonly edges: "power";
    readonly deadTime: "power";
    readonly gates: "power";
    readonly total: "power";
}>;
