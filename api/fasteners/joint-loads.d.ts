export declare const jointLoads: import("../formula/formula.js").Formula<{
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly externalLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly loadFactor: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly below: 1;
    };
}, {
    readonly boltLoad: "force";
    readonly faceLoad: "force";
    readonly separationLoad: "force";
    readonly state: {
        readonly oneOf: readonly ["closed", "open"];
    };
}>;
export declare const jointReserves: import("../formula/formula.js").Formula<{
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly externalLoad: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly loadFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly below: 1;
    };
    readonly proofLoad: {
        readonly kind: "force";
        readonly above: 0;
    };
}, {
    readonly yieldReserve: "ratio";
    readonly overloadReserve: "ratio";
    readonly separationReserve: "ratio";
}>;
export declare const jointSlip: import("../formula/formula.js").Formula<{
    readonly faceLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly friction: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly faces: {
        readonly kind: "count";
        readonly min: 1;
        readonly whole: true;
        readonly default: 1;
    };
    readonly shearForce: {
        readonly kind: "force";
        readonly min: 0;
    };
}, {
    readonly slipForce: "force";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly state: {
        readonly oneOf: readonly ["holds", "slips"];
    };
}>;
export declare const boltFatigue: import("../formula/formula.js").Formula<{
    readonly thread: {
        readonly fields: {
            readonly diameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly stressArea: {
                readonly kind: "area";
                readonly above: 0;
            };
        };
    };
    readonly largestLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly smallestLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly clampLoad: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly loadFactor: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly below: 1;
    };
}, {
    readonly amplitude: "stress";
    readonly allowableAmplitude: "stress";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly state: {
        readonly oneOf: readonly ["closed", "opens"];
    };
}>;
