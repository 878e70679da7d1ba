export interface CreepingShare {
    readonly share: number;
    readonly creep: (time: number) => number;
}
export declare function relaxationOf(elasticShare: number, creeping: readonly CreepingShare[], end: number): (time: number) => number;
