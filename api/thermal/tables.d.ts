import { type Property } from '../formula/index.js';
export declare const insulationClasses: {
    A: Property<"temperature">;
    E: Property<"temperature">;
    B: Property<"temperature">;
    F: Property<"temperature">;
    H: Property<"temperature">;
    N: Property<"temperature">;
};
export declare const magnetGrades: {
    standard: Property<"temperature">;
    M: Property<"temperature">;
    H: Property<"temperature">;
    SH: Property<"temperature">;
    UH: Property<"temperature">;
    EH: Property<"temperature">;
};
export declare const adhesiveLimits: {
    anaerobic: Property<"temperature">;
    cyanoacrylate: Property<"temperature">;
    epoxy: Property<"temperature">;
    acrylicTape: Property<"temperature">;
};
export declare const emissivities: {
    aluminiumPolished: Property<"ratio">;
    aluminiumSheet: Property<"ratio">;
    aluminiumOxidised: Property<"ratio">;
    aluminiumAnodised: Property<"ratio">;
    copperPolished: Property<"ratio">;
    copperOxidised: Property<"ratio">;
    steelPolished: Property<"ratio">;
    steelRolled: Property<"ratio">;
    paint: Property<"ratio">;
    lacquer: Property<"ratio">;
    polymer: Property<"ratio">;
};
export interface ThermalMaterial {
    readonly conductivity: Property<'thermalConductivity'>;
    readonly density: Property<'density'>;
    readonly specificHeat: Property<'specificHeat'>;
}
export declare const thermalMaterials: {
    copper: ThermalMaterial;
    aluminium6061: ThermalMaterial;
    steel: ThermalMaterial;
    printedPolymer: ThermalMaterial;
    printedCarbonFilled: ThermalMaterial;
};
export declare const touchThresholds: {
    metal: Property<"temperature">;
    glass: Property<"temperature">;
    polymer: Property<"temperature">;
};
