export type NumericFailure = 'noBracket' | 'notFinite' | 'noConvergence' | 'outOfRange' | 'badArgument' | 'singular';
export declare class NumericError extends Error {
    readonly name = "NumericError";
    readonly routine: string;
    readonly reason: NumericFailure;
    readonly asked: Readonly<Record<string, unknown>>;
    constructor(routine: string, reason: NumericFailure, explanation: string, asked?: Readonly<Record<string, unknown>>);
}
