export interface HeatSpell {
    readonly clock: number;
    readonly softening: number;
    readonly growth: number;
}
export interface HeatedJoint {
    readonly clampLoad: number;
    readonly elasticCompliance: number;
    readonly creepingCompliance: number;
    readonly creep: (time: number) => number;
    readonly spells: readonly HeatSpell[];
}
export declare function loadsThroughSpells(joint: HeatedJoint): {
    readonly starts: number[];
    readonly ends: number[];
};
