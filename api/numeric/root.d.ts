export type ScalarFunction = (x: number) => number;
export interface RootOptions {
    readonly xTolerance?: number | undefined;
    readonly fTolerance?: number | undefined;
    readonly maxEvaluations?: number | undefined;
}
export declare function bracketRoot(f: ScalarFunction, lo: number, hi: number, options?: RootOptions): number;
export interface FindRootsOptions extends RootOptions {
    readonly samples?: number | undefined;
    readonly spacing?: 'linear' | 'log' | undefined;
}
export interface Crossings {
    readonly roots: readonly number[];
    readonly poles: readonly number[];
}
export declare function findRoots(f: ScalarFunction, lo: number, hi: number, options?: FindRootsOptions): Crossings;
export interface ExpandOptions {
    readonly step?: number | undefined;
    readonly factor?: number | undefined;
    readonly lower?: number | undefined;
    readonly upper?: number | undefined;
    readonly maxSteps?: number | undefined;
}
export declare function expandBracket(f: ScalarFunction, start: number, options?: ExpandOptions): [number, number];
