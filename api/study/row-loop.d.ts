export interface RowLoop {
    readonly x: Record<string, unknown>;
    readonly kernel: (x: unknown) => unknown;
    readonly paths: readonly string[];
    readonly inputs: readonly Float64Array[];
    readonly keys: readonly string[];
    readonly outputs: readonly (Float64Array | string[])[];
}
export declare function runRows(loop: RowLoop, rows: number): void;
