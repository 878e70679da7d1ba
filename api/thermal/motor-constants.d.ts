export declare const backEmfConstant: import("../formula/formula.js").Formula<{
    readonly speedConstant: {
        readonly kind: "speedConstant";
        readonly above: 0;
    };
    readonly basis: {
        readonly oneOf: readonly ["spunPeakLineToLine", "noLoadSixStep", "catalogue"];
    };
}, {
    readonly typical: "backEmfConstant";
    readonly low: "backEmfConstant";
    readonly high: "backEmfConstant";
}>;
export declare const torqueConstants: import("../formula/formula.js").Formula<{
    readonly backEmfConstant: {
        readonly kind: "backEmfConstant";
        readonly above: 0;
    };
}, {
    readonly peakPhase: "torqueConstantPeakPhase";
    readonly rmsPhase: "torqueConstantRmsPhase";
    readonly powerInvariant: "torqueConstantPowerInvariant";
    readonly dcTrapezoidal: "torqueConstantDc";
    readonly dcSinusoidal: "torqueConstantDc";
}>;
export declare const motorConstant: import("../formula/formula.js").Formula<{
    readonly backEmfConstant: {
        readonly kind: "backEmfConstant";
        readonly above: 0;
    };
    readonly terminalResistance: {
        readonly kind: "electricalResistance";
        readonly above: 0;
    };
}, "motorConstant">;
export declare const currentsForTorque: import("../formula/formula.js").Formula<{
    readonly torque: "torque";
    readonly backEmfConstant: {
        readonly kind: "backEmfConstant";
        readonly above: 0;
    };
}, {
    readonly peakPhase: "peakPhaseCurrent";
    readonly rmsPhase: "rmsPhaseCurrent";
    readonly powerInvariant: "powerInvariantCurrent";
    readonly dcTrapezoidal: "current";
}>;
export declare const terminalResistance: import("../formula/formula.js").Formula<{
    readonly legResistance: {
        readonly kind: "electricalResistance";
        readonly above: 0;
    };
    readonly connection: {
        readonly oneOf: readonly ["wye", "delta"];
    };
}, {
    readonly terminal: "electricalResistance";
    readonly phase: "electricalResistance";
}>;
export declare const motorTorqueBand: import("../formula/formula.js").Formula<{
    readonly jointTorque: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly ratio: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly efficiency: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
    };
    readonly backEfficiency: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly optional: true;
    };
}, {
    readonly raising: "torque";
    readonly frictionless: "torque";
    readonly lowering: "torque";
}>;
