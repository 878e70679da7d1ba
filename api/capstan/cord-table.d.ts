export type FibreName = 'UHMWPE high grade' | 'UHMWPE standard' | 'aramid' | 'aramid high modulus' | 'LCP' | 'PBO';
export declare function cordFibre(name: FibreName): {
    readonly creep: "activated";
    readonly friction: import("../formula/provenance.js").Property<"ratio">;
    readonly serviceTemperature: import("../formula/provenance.js").Property<"serviceTemperature">;
    readonly endTemperature: import("../formula/provenance.js").Property<"meltingTemperature">;
    readonly density: import("../formula/provenance.js").Property<"density">;
    readonly strength: import("../formula/provenance.js").Property<"stress">;
    readonly modulus: import("../formula/provenance.js").Property<"modulus">;
} | {
    readonly creep: "logarithmic";
    readonly friction: import("../formula/provenance.js").Property<"ratio">;
    readonly serviceTemperature: import("../formula/provenance.js").Property<"serviceTemperature">;
    readonly endTemperature: import("../formula/provenance.js").Property<"meltingTemperature">;
    readonly density: import("../formula/provenance.js").Property<"density">;
    readonly strength: import("../formula/provenance.js").Property<"stress">;
    readonly modulus: import("../formula/provenance.js").Property<"modulus">;
};
export declare function fibreNames(): FibreName[];
export interface ControlCable {
    readonly size: string;
    readonly construction: string;
    readonly carbon: number;
    readonly stainless: number;
}
export declare const controlCables: readonly ControlCable[];
export type CordEnd = 'resinSocket' | 'swagedSleeve' | 'splice' | 'bowline' | 'bowlineUHMWPE' | 'bondedFerrule';
export declare function endEfficiency(end: CordEnd): import("../formula/provenance.js").Property<"ratio">;
