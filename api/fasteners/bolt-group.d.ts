export declare const boltGroupShear: import("../formula/formula.js").Formula<{
    readonly bolts: {
        readonly list: {
            readonly fields: {
                readonly x: "length";
                readonly y: "length";
                readonly area: {
                    readonly kind: "area";
                    readonly above: 0;
                };
            };
        };
    };
    readonly forceX: "force";
    readonly forceY: "force";
    readonly atX: "length";
    readonly atY: "length";
    readonly moment: {
        readonly kind: "torque";
        readonly default: "0 N m";
    };
}, {
    readonly alongX: {
        readonly list: "force";
    };
    readonly alongY: {
        readonly list: "force";
    };
    readonly sizes: {
        readonly list: "force";
    };
    readonly largest: "force";
    readonly centreMoment: "torque";
}>;
export declare const boltGroupTipping: import("../formula/formula.js").Formula<{
    readonly distances: {
        readonly list: {
            readonly kind: "length";
            readonly above: 0;
        };
    };
    readonly moment: {
        readonly kind: "torque";
        readonly min: 0;
    };
    readonly tension: {
        readonly kind: "force";
        readonly min: 0;
        readonly default: "0 N";
    };
}, {
    readonly tensions: {
        readonly list: "force";
    };
    readonly largest: "force";
}>;
export declare const prying: import("../formula/formula.js").Formula<{
    readonly load: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly loadToBolt: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly boltToToe: {
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
    readonly holeDiameter: {
        readonly kind: "length";
        readonly min: 0;
    };
}, {
    readonly boltTension: "force";
    readonly toeForce: "force";
    readonly flangeStress: "stress";
}>;
