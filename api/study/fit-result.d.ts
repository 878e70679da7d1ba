import { type Chart } from '../chart/index.js';
import type { LeastSquaresFit } from '../numeric/index.js';
import { type Kind, Quantity } from '../units/index.js';
import type { ResidualCheck } from './residuals.js';
import { Printable } from './show.js';
export interface FittedParameter {
    readonly path: string;
    readonly value: Quantity<Kind>;
    readonly state: 'determined' | 'atLimit' | 'undetermined';
    readonly standardError: Quantity<Kind> | undefined;
    readonly interval: readonly [Quantity<Kind>, Quantity<Kind>] | undefined;
}
export interface Confusion {
    readonly parameters: readonly string[];
    readonly message: string;
}
export declare class FitResult extends Printable {
    readonly formula: string;
    readonly parameters: readonly FittedParameter[];
    private readonly kind;
    private readonly numbers;
    readonly confidence: number;
    readonly residuals: Float64Array;
    readonly fittedValues: Float64Array;
    readonly checks: readonly ResidualCheck[];
    constructor(formula: string, parameters: readonly FittedParameter[], kind: Kind, numbers: LeastSquaresFit, confidence: number, residuals: Float64Array, fittedValues: Float64Array, checks: readonly ResidualCheck[]);
    get deviation(): Quantity<Kind>;
    get sumOfSquares(): number;
    get degreesOfFreedom(): number;
    get converged(): boolean;
    value(path: string): Quantity<Kind>;
    correlation(one: string, other: string): number;
    get confusions(): Confusion[];
    get chart(): Chart;
    toMarkdown(): string;
}
