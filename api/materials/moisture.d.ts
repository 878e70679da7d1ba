export declare const waterUptake: import("../formula/formula.js").Formula<{
    readonly time: {
        readonly kind: "time";
        readonly min: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly diffusivity: {
        readonly kind: "massDiffusivity";
        readonly above: 0;
    };
}, "ratio">;
export declare const uptakeTime: import("../formula/formula.js").Formula<{
    readonly share: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 0.9999;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly diffusivity: {
        readonly kind: "massDiffusivity";
        readonly above: 0;
    };
}, "time">;
export declare const equilibriumMoisture: import("../formula/formula.js").Formula<{
    readonly humidity: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly conditioned: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly saturated: {
        readonly kind: "ratio";
        readonly min: 0;
    };
}, "ratio">;
export declare const moistureGrowth: import("../formula/formula.js").Formula<{
    readonly length: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly before: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly after: {
        readonly kind: "ratio";
        readonly min: 0;
    };
    readonly swelling: {
        readonly kind: "ratio";
        readonly min: 0;
    };
}, "length">;
