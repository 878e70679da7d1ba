import { type Kind, Quantity } from '../units/index.js';
export type Column = {
    readonly name: string;
    readonly kind: Kind;
    readonly unit: string;
    readonly values: Float64Array;
} | {
    readonly name: string;
    readonly words: readonly string[];
};
export declare class Table {
    readonly id: string;
    readonly columns: readonly Column[];
    readonly rows: number;
    constructor(id: string, columns: readonly Column[], rows: number);
    get gaps(): number;
    column(name: string): Column;
    in(name: string, unit: string): Float64Array;
    row(index: number): Record<string, Quantity<Kind> | string>;
    toCSV(): string;
    toMarkdown(most?: number): string;
}
export declare const numbers: (name: string, kind: Kind, rows: number) => {
    name: string;
    kind: "ratio" | "count" | "strain" | "angle" | "length" | "area" | "volume" | "curvature" | "secondMomentOfArea" | "sectionModulus" | "time" | "frequency" | "rate" | "strainRate" | "velocity" | "acceleration" | "jerk" | "angularVelocity" | "angularAcceleration" | "mass" | "massPerLength" | "density" | "momentOfInertia" | "impulse" | "force" | "forcePerLength" | "torque" | "stress" | "stressRate" | "modulus" | "creepCompliance" | "axialRigidity" | "bendingRigidity" | "foundationModulus" | "linearStiffness" | "linearCompliance" | "torsionalStiffness" | "torsionalCompliance" | "linearDamping" | "torsionalDamping" | "tenacity" | "energy" | "power" | "activationEnergy" | "pressureVelocity" | "specificWearRate" | "temperature" | "glassTransitionTemperature" | "heatDeflectionTemperature045" | "heatDeflectionTemperature180" | "vicatTemperature" | "meltingTemperature" | "serviceTemperature" | "temperatureDifference" | "temperatureRate" | "thermalExpansion" | "temperatureCoefficient" | "thermalConductivity" | "specificHeat" | "heatCapacity" | "thermalResistance" | "thermalConductance" | "heatTransferCoefficient" | "thermalContactResistance" | "heatFlux" | "thermalDiffusivity" | "massDiffusivity" | "kinematicViscosity" | "dynamicViscosity" | "volumeFlow" | "voltage" | "current" | "peakPhaseCurrent" | "rmsPhaseCurrent" | "powerInvariantCurrent" | "charge" | "electricalResistance" | "resistancePerLength" | "electricalResistivity" | "inductance" | "fluxLinkage" | "speedConstant" | "backEmfConstant" | "torqueConstantPeakPhase" | "torqueConstantRmsPhase" | "torqueConstantPowerInvariant" | "torqueConstantDc" | "motorConstant" | "countsPerAngle";
    unit: string;
    values: Float64Array<ArrayBuffer>;
};
