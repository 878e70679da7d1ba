import { type Chart } from '../chart/index.js';
import { type Formula, type Inputs, type Output } from '../formula/index.js';
import { type Kind, Quantity } from '../units/index.js';
import { type OptionsFor, type Uncertain } from './model.js';
import { Printable } from './show.js';
export interface VarianceOptions {
    readonly samples?: number;
    readonly replicates?: number;
    readonly seed?: number;
    readonly confidence?: number;
}
export interface Share {
    readonly value: number;
    readonly low: number;
    readonly high: number;
}
export interface VarianceShare {
    readonly path: string;
    readonly scatters: string;
    readonly first: Share;
    readonly total: Share;
}
export declare class VarianceShares extends Printable {
    readonly formula: string;
    readonly mean: Quantity<Kind>;
    readonly deviation: Quantity<Kind>;
    readonly inputs: readonly VarianceShare[];
    readonly interplay: number;
    readonly confidence: number;
    readonly runs: number;
    readonly gaps: number;
    constructor(formula: string, mean: Quantity<Kind>, deviation: Quantity<Kind>, inputs: readonly VarianceShare[], interplay: number, confidence: number, runs: number, gaps: number);
    get chart(): Chart;
    toMarkdown(): string;
}
export declare function varianceShares<I extends Inputs, O extends Output>(formula: Formula<I, O>, given: NoInfer<Uncertain<I>>, ...[options]: OptionsFor<O, VarianceOptions>): VarianceShares;
