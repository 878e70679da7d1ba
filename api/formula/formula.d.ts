import { type Kind, type Note } from '../units/index.js';
import type { Definition, Flat, Given, Inputs, Output, Result, Si, SiResult } from './definition.js';
export interface CallOptions {
    readonly strict?: boolean;
}
export interface Formula<I extends Inputs, O extends Output> {
    (given: Given<I>, options?: CallOptions): Result<O>;
    readonly si: (x: Flat<Si<I>>) => SiResult<O>;
    readonly id: string;
    readonly def: Definition<I, O, SiResult<O>>;
}
export interface AnyFormula {
    (given: never, options?: CallOptions): unknown;
    readonly si: (x: never) => unknown;
    readonly id: string;
    readonly def: {
        readonly inputs: Inputs;
        readonly output: Output;
        readonly assumes?: readonly string[];
        readonly source: Definition<Inputs, Kind, number>['source'];
        readonly valid?: {
            readonly [statement: string]: (x: never, y: never) => boolean;
        };
    };
}
export declare class ValidityError extends Error {
    name: string;
}
export declare class NoResultError extends Error {
    name: string;
}
export declare function formula<const I extends Inputs, const O extends Output, const Y extends SiResult<O>>(id: string, def: Definition<I, O, Y>): Formula<I, O>;
export declare function brokenStatements(formula: AnyFormula, x: unknown, y: unknown): string[];
export declare function dressed(id: string, output: Output, y: unknown, notes: readonly Note[] | undefined): unknown;
