export declare const cantileverToe: import("../formula/formula.js").Formula<{
    readonly modulus: {
        readonly kind: "modulus";
        readonly above: 0;
    };
    readonly length: {
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
    readonly tipForce: {
        readonly kind: "force";
        readonly min: 0;
    };
    readonly allowableStrain: {
        readonly kind: "strain";
        readonly above: 0;
    };
}, {
    readonly stiffness: "linearStiffness";
    readonly deflection: "length";
    readonly tipAngle: "angle";
    readonly rootStrain: "strain";
    readonly forceLimit: "force";
    readonly deflectionLimit: "length";
    readonly use: "ratio";
}>;
export declare const notchHinge: import("../formula/formula.js").Formula<{
    readonly modulus: {
        readonly kind: "modulus";
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
    readonly notchRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly angle: {
        readonly kind: "angle";
        readonly min: 0;
    };
    readonly allowableStrain: {
        readonly kind: "strain";
        readonly above: 0;
    };
}, {
    readonly stiffness: "torsionalStiffness";
    readonly moment: "torque";
    readonly strain: "strain";
    readonly angleLimit: "angle";
    readonly use: "ratio";
}>;
