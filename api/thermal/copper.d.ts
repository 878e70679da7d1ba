export declare const ZERO_RESISTANCE_OFFSET: {
    readonly copper: 234.5;
    readonly aluminium: 225;
};
export declare const hotResistance: import("../formula/formula.js").Formula<{
    readonly resistance: {
        readonly kind: "electricalResistance";
        readonly above: 0;
    };
    readonly measuredAt: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "400 degC";
        readonly default: "20 degC";
    };
    readonly temperature: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "400 degC";
    };
    readonly conductor: {
        readonly oneOf: readonly ["copper", "aluminium"];
        readonly default: "copper";
    };
}, "electricalResistance">;
export declare const copperLoss: import("../formula/formula.js").Formula<{
    readonly peakPhaseCurrent: "peakPhaseCurrent";
    readonly terminalResistance: {
        readonly kind: "electricalResistance";
        readonly min: 0;
    };
}, "power">;
export declare const copperLossFromRms: import("../formula/formula.js").Formula<{
    readonly rmsPhaseCurrent: "rmsPhaseCurrent";
    readonly terminalResistance: {
        readonly kind: "electricalResistance";
        readonly min: 0;
    };
}, "power">;
export declare const copperLossForTorque: import("../formula/formula.js").Formula<{
    readonly torque: "torque";
    readonly motorConstant: {
        readonly kind: "motorConstant";
        readonly above: 0;
    };
}, "power">;
export declare const phaseLossesAtStall: import("../formula/formula.js").Formula<{
    readonly peakPhaseCurrent: "peakPhaseCurrent";
    readonly terminalResistance: {
        readonly kind: "electricalResistance";
        readonly min: 0;
    };
    readonly electricalAngle: {
        readonly kind: "angle";
        readonly default: "0 deg";
    };
}, {
    readonly a: "power";
    readonly b: "power";
    readonly c: "power";
    readonly worst: "power";
    readonly timesRotatingShare: "ratio";
}>;
export declare const hotSteadyState: import("../formula/formula.js").Formula<{
    readonly lossAt20: {
        readonly kind: "power";
        readonly min: 0;
    };
    readonly thermalResistance: {
        readonly kind: "thermalResistance";
        readonly above: 0;
    };
    readonly ambient: "temperature";
}, {
    readonly temperature: {
        readonly kind: "temperature";
        readonly infinite: true;
    };
    readonly loss: {
        readonly kind: "power";
        readonly infinite: true;
    };
    readonly state: {
        readonly oneOf: readonly ["steady", "runaway"];
    };
}>;
export declare const runawayLoss: import("../formula/formula.js").Formula<{
    readonly thermalResistance: {
        readonly kind: "thermalResistance";
        readonly above: 0;
    };
}, "power">;
export declare const continuousLoss: import("../formula/formula.js").Formula<{
    readonly limit: "temperature";
    readonly ambient: "temperature";
    readonly thermalResistance: {
        readonly kind: "thermalResistance";
        readonly above: 0;
    };
}, {
    readonly loss: "power";
    readonly lossAt20: "power";
}>;
export declare const adiabaticPulse: import("../formula/formula.js").Formula<{
    readonly heatCapacity: {
        readonly kind: "heatCapacity";
        readonly above: 0;
    };
    readonly lossAt20: {
        readonly kind: "power";
        readonly above: 0;
    };
    readonly from: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
    };
    readonly to: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
    };
}, "time">;
export declare const windingHeatCapacity: import("../formula/formula.js").Formula<{
    readonly conductorMass: {
        readonly kind: "mass";
        readonly above: 0;
    };
    readonly conductorSpecificHeat: {
        readonly kind: "specificHeat";
        readonly above: 0;
        readonly default: "385 J/(kg K)";
    };
    readonly insulationMass: {
        readonly kind: "mass";
        readonly min: 0;
        readonly default: "0 g";
    };
    readonly insulationSpecificHeat: {
        readonly kind: "specificHeat";
        readonly above: 0;
        readonly default: "1200 J/(kg K)";
    };
}, "heatCapacity">;
export declare const magnetDerating: import("../formula/formula.js").Formula<{
    readonly backEmfConstant: {
        readonly kind: "backEmfConstant";
        readonly above: 0;
    };
    readonly magnetTemperature: {
        readonly kind: "temperature";
        readonly below: "400 degC";
    };
    readonly coefficient: {
        readonly kind: "temperatureCoefficient";
        readonly max: 0;
        readonly above: "-0.2 %/K";
        readonly default: "-0.11 %/K";
    };
}, {
    readonly backEmfConstant: "backEmfConstant";
    readonly lossFactor: "ratio";
}>;
export declare const rmsTorque: import("../formula/formula.js").Formula<{
    readonly torques: {
        readonly list: "torque";
    };
    readonly durations: {
        readonly list: {
            readonly kind: "time";
            readonly min: 0;
        };
    };
    readonly windingTimeConstant: {
        readonly kind: "time";
        readonly above: 0;
        readonly optional: true;
    };
}, {
    readonly torque: "torque";
    readonly period: "time";
}>;
