import { type Property, type PropertyRecord, type Source } from '../formula/index.js';
import { type Issue, type Kind, type UnitOf } from '../units/index.js';
export declare const PROPERTY_KINDS: {
    readonly density: "density";
    readonly modulus: "modulus";
    readonly modulusAcrossLayers: "modulus";
    readonly poissonRatio: "ratio";
    readonly tensileStrength: "stress";
    readonly yieldStrength: "stress";
    readonly proofStress: "stress";
    readonly shearStrength: "stress";
    readonly flexuralStrength: "stress";
    readonly acrossLayersRatio: "ratio";
    readonly interlayerShearRatio: "ratio";
    readonly strainLimit: "strain";
    readonly strengthKept1000Hours: "ratio";
    readonly strengthKept1Year: "ratio";
    readonly creepCoefficient: "ratio";
    readonly creepExponent: "ratio";
    readonly activationEnergy: "activationEnergy";
    readonly fatigueRatio: "ratio";
    readonly enduranceLimit: "stress";
    readonly glassTransitionTemperature: "glassTransitionTemperature";
    readonly glassTransitionConditioned: "glassTransitionTemperature";
    readonly heatDeflectionTemperature045: "heatDeflectionTemperature045";
    readonly heatDeflectionTemperature180: "heatDeflectionTemperature180";
    readonly vicatTemperature: "vicatTemperature";
    readonly meltingTemperature: "meltingTemperature";
    readonly serviceTemperature: "serviceTemperature";
    readonly thermalConductivity: "thermalConductivity";
    readonly thermalConductivityAcrossLayers: "thermalConductivity";
    readonly specificHeat: "specificHeat";
    readonly thermalExpansion: "thermalExpansion";
    readonly thermalExpansionAcrossLayers: "thermalExpansion";
    readonly emissivity: "ratio";
    readonly moistureConditioned: "ratio";
    readonly moistureSaturated: "ratio";
    readonly moistureDiffusivity: "massDiffusivity";
    readonly moistureSwelling: "ratio";
    readonly modulusConditionedRatio: "ratio";
    readonly strengthConditionedRatio: "ratio";
    readonly modulusSaturatedRatio: "ratio";
    readonly strengthSaturatedRatio: "ratio";
    readonly frictionOnSteel: "ratio";
    readonly frictionOnSteelGreased: "ratio";
    readonly frictionOnSelf: "ratio";
    readonly pressureVelocityLimit: "pressureVelocity";
    readonly specificWearRate: "specificWearRate";
};
export type PropertyName = keyof typeof PROPERTY_KINDS;
export type KindOf<P extends PropertyName> = (typeof PROPERTY_KINDS)[P];
export type Row<K extends Kind> = readonly [
    typical: number,
    low: number,
    high: number,
    unit: UnitOf<K>,
    source: Source,
    conditions?: string
];
export type Rows = {
    readonly [P in PropertyName]?: Row<KindOf<P>>;
};
export interface StrengthCurve {
    readonly points: readonly (readonly [celsius: number, low: number, typical: number, high: number])[];
    readonly source: Source;
    readonly conditions: string;
}
export type Family = 'amorphous' | 'semicrystalline' | 'elastomer' | 'metal' | 'magnet' | 'adhesive';
export type Process = 'fusedFilament' | 'sintered' | 'moulded' | 'wrought' | 'cured';
export interface MaterialHead {
    readonly name: string;
    readonly title: string;
    readonly aliases?: readonly string[];
    readonly family: Family;
    readonly process: Process;
    readonly strengthCurve?: StrengthCurve;
    readonly remarks?: readonly string[];
}
export type Material = MaterialHead & {
    readonly [P in PropertyName]?: Property<KindOf<P>>;
};
export type MaterialWith<P extends PropertyName> = Material & {
    readonly [Q in P]: Property<KindOf<Q>>;
};
export declare function defineMaterial<const R extends Rows>(head: MaterialHead, rows: R): MaterialWith<Extract<keyof R, PropertyName>>;
export declare function readProperty(name: PropertyName, record: PropertyRecord<Kind>, path: string, issues: Issue[]): Property | undefined;
export declare function checkCurve(curve: StrengthCurve | undefined, issues: Issue[]): void;
export declare const propertiesOf: (material: Material) => [PropertyName, Property][];
export declare function needed<P extends PropertyName>(where: string, material: Material, name: P): Property<KindOf<P>>;
