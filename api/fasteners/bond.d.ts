export declare const adhesiveTemperatureFactor: import("../formula/formula.js").Formula<{
    readonly temperature: "temperature";
    readonly glassTransitionTemperature: "glassTransitionTemperature";
}, {
    readonly factor: "ratio";
    readonly state: {
        readonly oneOf: readonly ["usable", "softening", "beyondGlassTransition"];
    };
}>;
export declare const bondStrength: import("../formula/formula.js").Formula<{
    readonly shearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly materialFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly gapFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly fatigueFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly ageingFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly temperature: "temperature";
    readonly glassTransitionTemperature: "glassTransitionTemperature";
    readonly partGlassTransitionTemperature: {
        readonly kind: "glassTransitionTemperature";
        readonly optional: true;
    };
}, {
    readonly shearStrength: "stress";
    readonly temperatureFactor: "ratio";
    readonly state: {
        readonly oneOf: readonly ["usable", "softening", "beyondGlassTransition"];
    };
}>;
export declare const bondedPin: import("../formula/formula.js").Formula<{
    readonly diameter: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly length: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly shearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly materialFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly gapFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly fatigueFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly ageingFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly temperature: "temperature";
    readonly glassTransitionTemperature: "glassTransitionTemperature";
    readonly partGlassTransitionTemperature: {
        readonly kind: "glassTransitionTemperature";
        readonly optional: true;
    };
}, {
    readonly axialForce: "force";
    readonly torque: "torque";
    readonly shearStrength: "stress";
    readonly state: {
        readonly oneOf: readonly ["usable", "softening", "beyondGlassTransition"];
    };
}>;
export declare const bondedNut: import("../formula/formula.js").Formula<{
    readonly acrossFlats: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly height: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly shearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly materialFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly gapFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly fatigueFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly ageingFactor: {
        readonly kind: "ratio";
        readonly above: 0;
        readonly max: 1;
        readonly default: 1;
    };
    readonly temperature: "temperature";
    readonly glassTransitionTemperature: "glassTransitionTemperature";
    readonly partGlassTransitionTemperature: {
        readonly kind: "glassTransitionTemperature";
        readonly optional: true;
    };
    readonly substrateShearStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
    readonly acrossLayersStrength: {
        readonly kind: "stress";
        readonly above: 0;
    };
}, {
    readonly axialForce: "force";
    readonly torque: "torque";
    readonly governedBy: {
        readonly oneOf: readonly ["bond", "substrateShear", "plugTension"];
    };
    readonly shearStrength: "stress";
    readonly state: {
        readonly oneOf: readonly ["usable", "softening", "beyondGlassTransition"];
    };
}>;
