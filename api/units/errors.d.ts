export interface Issue {
    readonly path: string;
    readonly given: string;
    readonly accepts: string;
}
export declare class InputError extends Error {
    readonly where: string;
    readonly issues: readonly Issue[];
    name: string;
    constructor(where: string, issues: readonly Issue[]);
}
export declare function show(given: unknown): string;
