export declare const boltStiffness: import("../formula/formula.js").Formula<{
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly stressArea: {
        readonly kind: "area";
        readonly above: 0;
    };
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly shankLength: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly threadLength: {
        readonly kind: "length";
        readonly min: 0;
    };
}, "linearStiffness">;
export declare const boltCompliance: import("../formula/formula.js").Formula<{
    readonly thread: {
        readonly fields: {
            readonly diameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly rootArea: {
                readonly kind: "area";
                readonly above: 0;
            };
        };
    };
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly shankLength: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly threadLength: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly head: {
        readonly oneOf: readonly ["hexagon", "socket"];
    };
    readonly end: {
        readonly oneOf: readonly ["nut", "tapped"];
    };
    readonly tappedModulus: {
        readonly kind: "modulus";
        readonly above: 0;
        readonly optional: true;
    };
}, "linearCompliance">;
export declare const loadFactor: import("../formula/formula.js").Formula<{
    readonly boltCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
    readonly memberCompliance: {
        readonly kind: "linearCompliance";
        readonly min: 0;
    };
}, "ratio">;
