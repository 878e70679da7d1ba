import { type Chart } from '../chart/index.js';
import { type Formula, type Inputs, type Output } from '../formula/index.js';
import { type Kind, Quantity } from '../units/index.js';
import { type OptionsFor, type Uncertain } from './model.js';
import { type ScalarPath } from './path.js';
import { Printable } from './show.js';
export interface Correlation<P extends string = string> {
    readonly between: readonly [P, P];
    readonly coefficient: number;
}
export interface UncertaintyOptions<P extends string = string> {
    readonly correlations?: readonly Correlation<P>[];
    readonly samples?: number;
    readonly seed?: number;
    readonly coverage?: number;
}
export interface Contribution {
    readonly path: string;
    readonly scatters: string;
    readonly slope: number;
    readonly deviation: Quantity<Kind>;
    readonly share: number;
}
export interface LinearUncertainty {
    readonly value: Quantity<Kind>;
    readonly deviation: Quantity<Kind>;
    readonly contributions: readonly Contribution[];
}
export interface Estimate {
    readonly value: Quantity<Kind>;
    readonly error: Quantity<Kind>;
}
export interface MonteCarloUncertainty {
    readonly samples: number;
    readonly seed: number;
    readonly mean: Estimate;
    readonly deviation: Estimate;
    readonly median: Estimate;
    readonly low: Estimate;
    readonly high: Estimate;
    readonly shortest: readonly [Quantity<Kind>, Quantity<Kind>];
    readonly gaps: number;
    readonly converged: boolean;
    readonly samplesNeeded: number;
    readonly sorted: Float64Array;
}
export declare class Uncertainty extends Printable {
    readonly formula: string;
    readonly kind: Kind;
    readonly coverage: number;
    readonly linear: LinearUncertainty;
    readonly monteCarlo: MonteCarloUncertainty;
    readonly remarks: readonly string[];
    constructor(formula: string, kind: Kind, coverage: number, linear: LinearUncertainty, monteCarlo: MonteCarloUncertainty, remarks: readonly string[]);
    shareBelow(value: Quantity<Kind>): number;
    get chart(): Chart;
    toMarkdown(): string;
}
export declare function uncertainty<I extends Inputs, O extends Output>(formula: Formula<I, O>, given: NoInfer<Uncertain<I>>, ...[options]: OptionsFor<O, UncertaintyOptions<ScalarPath<I>>>): Uncertainty;
