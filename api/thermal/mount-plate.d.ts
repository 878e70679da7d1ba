export interface PlateNumbers {
    readonly innerRadius: number;
    readonly outerRadius: number;
    readonly plateRadius: number;
    readonly thickness: number;
    readonly conductivity: number;
    readonly density: number;
    readonly specificHeat: number;
    readonly insert?: {
        readonly radius: number;
        readonly thickness: number;
        readonly conductivity: number;
        readonly density: number;
        readonly specificHeat: number;
        readonly contact: number;
    } | undefined;
    readonly entry: 'isothermal' | 'even';
    readonly underMotor: 'covered' | 'open';
}
export interface PlateAnswer {
    conductance: number;
    motorFace: number;
    freeFace: number;
}
export interface PlateModel {
    at(motorFaceCoefficient: number, freeFaceCoefficient: number, out: PlateAnswer): PlateAnswer;
    readonly capacity: number;
    readonly storeConductance: number;
    readonly mass: number;
}
export declare function plateModel(plate: PlateNumbers): PlateModel;
export declare function massOf({ plateRadius, thickness, density, insert }: PlateNumbers): number;
export declare const mountPlate: import("../formula/formula.js").Formula<{
    readonly innerRadius: {
        readonly kind: "length";
        readonly min: 0;
    };
    readonly outerRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly plateRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly thickness: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly conductivity: {
        readonly kind: "thermalConductivity";
        readonly above: 0;
    };
    readonly density: {
        readonly kind: "density";
        readonly above: 0;
        readonly default: "1070 kg/m^3";
    };
    readonly specificHeat: {
        readonly kind: "specificHeat";
        readonly above: 0;
        readonly default: "1300 J/(kg K)";
    };
    readonly motorFaceCoefficient: {
        readonly kind: "heatTransferCoefficient";
        readonly min: 0;
    };
    readonly freeFaceCoefficient: {
        readonly kind: "heatTransferCoefficient";
        readonly above: 0;
    };
    readonly insert: {
        readonly fields: {
            readonly radius: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly thickness: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly conductivity: {
                readonly kind: "thermalConductivity";
                readonly above: 0;
                readonly default: "167 W/(m K)";
            };
            readonly density: {
                readonly kind: "density";
                readonly above: 0;
                readonly default: "2700 kg/m^3";
            };
            readonly specificHeat: {
                readonly kind: "specificHeat";
                readonly above: 0;
                readonly default: "896 J/(kg K)";
            };
            readonly contact: {
                readonly kind: "heatTransferCoefficient";
                readonly above: 0;
                readonly default: "1500 W/(m^2 K)";
            };
        };
        readonly optional: true;
    };
}, {
    readonly resistance: "thermalResistance";
    readonly meanOfFreeFace: "ratio";
    readonly mass: "mass";
}>;
