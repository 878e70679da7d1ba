export declare const supplySag: import("../formula/formula.js").Formula<{
    readonly openCircuitVoltage: {
        readonly kind: "voltage";
        readonly above: 0;
    };
    readonly resistance: {
        readonly kind: "electricalResistance";
        readonly min: 0;
    };
    readonly power: "power";
}, {
    readonly voltage: "voltage";
    readonly current: "current";
    readonly mostPower: {
        readonly kind: "power";
        readonly infinite: true;
    };
    readonly state: {
        readonly oneOf: readonly ["holds", "brownOut"];
    };
}>;
export declare const speedAtCurrent: import("../formula/formula.js").Formula<{
    readonly voltage: {
        readonly kind: "voltage";
        readonly above: 0;
    };
    readonly backEmfConstant: {
        readonly kind: "backEmfConstant";
        readonly above: 0;
    };
    readonly terminalResistance: {
        readonly kind: "electricalResistance";
        readonly min: 0;
    };
    readonly peakPhaseCurrent: {
        readonly kind: "peakPhaseCurrent";
        readonly min: 0;
    };
    readonly phaseInductance: {
        readonly kind: "inductance";
        readonly min: 0;
        readonly default: "0 H";
    };
    readonly polePairs: {
        readonly kind: "count";
        readonly min: 1;
        readonly whole: true;
        readonly default: 1;
    };
}, {
    readonly speed: "angularVelocity";
    readonly state: {
        readonly oneOf: readonly ["turns", "stalled"];
    };
}>;
export declare const electricalPower: import("../formula/formula.js").Formula<{
    readonly torque: "torque";
    readonly speed: "angularVelocity";
    readonly copperLoss: {
        readonly kind: "power";
        readonly min: 0;
    };
    readonly otherLoss: {
        readonly kind: "power";
        readonly min: 0;
        readonly default: "0 W";
    };
}, {
    readonly mechanical: "power";
    readonly electrical: "power";
    readonly state: {
        readonly oneOf: readonly ["motoring", "braking", "regenerating"];
    };
}>;
export declare const gaugeWire: import("../formula/formula.js").Formula<{
    readonly gauge: {
        readonly kind: "count";
        readonly min: -3;
        readonly max: 40;
        readonly whole: true;
    };
}, {
    readonly diameter: "length";
    readonly area: "area";
    readonly resistancePerLength: "resistancePerLength";
}>;
export declare const leadLoss: import("../formula/formula.js").Formula<{
    readonly area: {
        readonly kind: "area";
        readonly above: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly current: {
        readonly kind: "current";
        readonly min: 0;
    };
    readonly conductors: {
        readonly kind: "count";
        readonly min: 1;
        readonly whole: true;
        readonly default: 2;
    };
    readonly temperature: {
        readonly kind: "temperature";
        readonly min: "-60 degC";
        readonly max: "200 degC";
        readonly default: "20 degC";
    };
}, {
    readonly resistance: "electricalResistance";
    readonly drop: "voltage";
    readonly loss: "power";
}>;
