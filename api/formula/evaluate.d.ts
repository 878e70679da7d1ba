import type { Flat, Inputs, Output, Si, SiResult } from './definition.js';
import { type AnyFormula, type Formula } from './formula.js';
import type { Source } from './provenance.js';
export type Evaluator = <I extends Inputs, O extends Output>(formula: Formula<I, O>, x: Flat<Si<I>>) => SiResult<O>;
export declare const bare: Evaluator;
export interface Step {
    readonly formula: string;
    readonly title: string;
    readonly inputs: Readonly<Record<string, string>>;
    readonly results: Readonly<Record<string, string>>;
    readonly assumes: readonly string[];
    readonly notes: readonly string[];
    readonly source: readonly Source[];
}
export interface Recorder {
    readonly of: Evaluator;
    steps(): Step[];
}
export declare function recorder(): Recorder;
export declare function stepOf(formula: AnyFormula, x: unknown, y: unknown): Step;
