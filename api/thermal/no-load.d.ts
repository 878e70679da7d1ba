export declare const noLoadLoss: import("../formula/formula.js").Formula<{
    readonly voltage: {
        readonly kind: "voltage";
        readonly above: 0;
    };
    readonly current: {
        readonly kind: "current";
        readonly above: 0;
    };
    readonly terminalResistance: {
        readonly kind: "electricalResistance";
        readonly min: 0;
    };
    readonly speed: {
        readonly kind: "angularVelocity";
        readonly above: 0;
    };
}, {
    readonly loss: "power";
    readonly dragTorque: "torque";
}>;
export declare const noLoadSplit: import("../formula/formula.js").Formula<{
    readonly speed1: {
        readonly kind: "angularVelocity";
        readonly above: 0;
    };
    readonly loss1: {
        readonly kind: "power";
        readonly min: 0;
    };
    readonly speed2: {
        readonly kind: "angularVelocity";
        readonly above: 0;
    };
    readonly loss2: {
        readonly kind: "power";
        readonly min: 0;
    };
}, {
    readonly constantDrag: "torque";
    readonly viscousDrag: "torsionalDamping";
}>;
export declare const dragLoss: import("../formula/formula.js").Formula<{
    readonly constantDrag: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly viscousDrag: {
        readonly kind: "torsionalDamping";
        readonly min: 0;
        readonly default: "0 N m s/rad";
    };
    readonly speed: "angularVelocity";
}, "power">;
