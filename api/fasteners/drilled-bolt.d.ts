export declare const drilledBolt: import("../formula/formula.js").Formula<{
    readonly outer: {
        readonly fields: {
            readonly rootDiameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly stressArea: {
                readonly kind: "area";
                readonly above: 0;
            };
            readonly rootArea: {
                readonly kind: "area";
                readonly above: 0;
            };
        };
    };
    readonly inner: {
        readonly fields: {
            readonly diameter: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly pitch: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly stressArea: {
                readonly kind: "area";
                readonly above: 0;
            };
        };
    };
    readonly outerYieldStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly innerYieldStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly tension: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly torque: {
        readonly kind: "torque";
        readonly min: 0;
    };
}, {
    readonly wall: "length";
    readonly rootArea: "area";
    readonly stressArea: "area";
    readonly areaLeft: "ratio";
    readonly torsionLeft: "ratio";
    readonly yieldLoad: "force";
    readonly yieldTorque: "torque";
    readonly vonMises: "stress";
    readonly reserve: {
        readonly kind: "ratio";
        readonly infinite: true;
    };
    readonly wallRule: {
        readonly oneOf: readonly ["met", "tooThin"];
    };
}>;
export declare const endCap: import("../formula/formula.js").Formula<{
    readonly thrust: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly axleDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly capDiameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly capThickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly linkBore: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly linkWidth: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly axleLength: {
        readonly kind: "length";
        readonly above: 0;
    };
}, {
    readonly play: "length";
    readonly pressure: "stress";
    readonly bendingStress: "stress";
    readonly shearStress: "stress";
    readonly state: {
        readonly oneOf: readonly ["turnsFreely", "clamped"];
    };
}>;
