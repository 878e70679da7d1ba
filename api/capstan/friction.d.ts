export declare const slackTension: import("../formula/formula.js").Formula<{
    readonly load: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly wrapAngle: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, "force">;
export declare const tautTension: import("../formula/formula.js").Formula<{
    readonly slackTension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly wrapAngle: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, "force">;
export declare const holdingRatio: import("../formula/formula.js").Formula<{
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly wrapAngle: {
        readonly kind: "angle";
        readonly min: 0;
    };
}, "ratio">;
export declare const frictionFromTensions: import("../formula/formula.js").Formula<{
    readonly tautTension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly slackTension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly wrapAngle: {
        readonly kind: "angle";
        readonly above: 0;
    };
}, "ratio">;
export declare const mobilisedArc: import("../formula/formula.js").Formula<{
    readonly tautTension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly slackTension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly above: 0;
    };
}, "angle">;
export declare const wrapsNeeded: import("../formula/formula.js").Formula<{
    readonly tensionRatio: {
        readonly kind: "ratio";
        readonly min: 1;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly above: 0;
    };
    readonly reserve: {
        readonly kind: "ratio";
        readonly min: 1;
        readonly default: 1;
    };
}, "count">;
export declare const runningTautTension: import("../formula/formula.js").Formula<{
    readonly slackTension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly wrapAngle: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly massPerLength: {
        readonly kind: "massPerLength";
        readonly min: 0;
    };
    readonly speed: {
        readonly kind: "velocity";
        readonly min: 0;
    };
}, {
    readonly tautTension: "force";
    readonly centrifugalTension: "force";
}>;
