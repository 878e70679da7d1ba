export declare const STEFAN_BOLTZMANN = 5.670374419e-8;
export declare const radiantFlux: import("../formula/formula.js").Formula<{
    readonly emissivity: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly surface: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly surroundings: {
        readonly kind: "temperature";
        readonly min: 0;
    };
    readonly viewFactor: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
        readonly default: 1;
    };
}, "heatFlux">;
export declare const radiationCoefficient: import("../formula/formula.js").Formula<{
    readonly emissivity: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
    };
    readonly surface: {
        readonly kind: "temperature";
        readonly above: 0;
    };
    readonly surroundings: {
        readonly kind: "temperature";
        readonly min: 0;
    };
    readonly viewFactor: {
        readonly kind: "ratio";
        readonly min: 0;
        readonly max: 1;
        readonly default: 1;
    };
}, "heatTransferCoefficient">;
