export type Derivative = (t: number, y: Float64Array, out: Float64Array) => void;
export interface OdeEvent {
    readonly value: (t: number, y: Float64Array) => number;
    readonly direction?: 'rising' | 'falling' | 'either' | undefined;
    readonly terminal?: boolean | undefined;
}
export interface OdeProblem {
    readonly derivative: Derivative;
    readonly start: number;
    readonly end: number;
    readonly initial: ArrayLike<number>;
    readonly relativeTolerance?: number | undefined;
    readonly absoluteTolerance?: number | ArrayLike<number> | undefined;
    readonly stops?: readonly number[] | undefined;
    readonly events?: readonly OdeEvent[] | undefined;
    readonly firstStep?: number | undefined;
    readonly maxStep?: number | undefined;
    readonly maxSteps?: number | undefined;
    readonly dense?: boolean | undefined;
}
export interface OdeEventRecord {
    readonly event: number;
    readonly t: number;
    readonly y: Float64Array;
}
export interface OdeSolution {
    readonly t: Float64Array;
    readonly y: Float64Array;
    readonly size: number;
    readonly tEnd: number;
    readonly yEnd: Float64Array;
    readonly events: readonly OdeEventRecord[];
    readonly ended: 'end' | 'event';
    readonly steps: number;
    readonly rejected: number;
    readonly evaluations: number;
    at(t: number, out?: Float64Array): Float64Array;
}
