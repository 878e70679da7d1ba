import { type AnyFormula, type Formula, type Given, type Inputs, type Output, type Scalar } from '../formula/index.js';
import { type In, type Kind } from '../units/index.js';
export type ScalarPath<I> = {
    [N in keyof I & string]: I[N] extends Kind | {
        kind: Kind;
    } ? N : I[N] extends {
        fields: infer F;
    } ? `${N}.${ScalarPath<F>}` : never;
}[keyof I & string];
export type KindAt<I, P> = P extends keyof I ? I[P] extends Kind ? I[P] : I[P] extends {
    kind: infer K extends Kind;
} ? K : never : P extends `${infer Head}.${infer Rest}` ? Head extends keyof I ? I[Head] extends {
    fields: infer F;
} ? KindAt<F, Rest> : never : never : never;
export type Without<I, P> = P extends keyof I ? Omit<Given<I>, P> : P extends `${infer Head}.${infer Rest}` ? Head extends keyof I ? I[Head] extends {
    fields: infer F;
} ? Omit<Given<I>, Head> & {
    [H in Head]: Without<F, Rest>;
} : never : never : never;
export type ScalarOutput<O> = {
    [N in keyof O & string]: O[N] extends Kind | {
        kind: Kind;
    } ? N : never;
}[keyof O & string];
export type Target<O> = O extends Kind ? In<O> : O extends {
    kind: infer K extends Kind;
    infinite: true;
} ? In<K> : {
    [N in ScalarOutput<O>]: {
        readonly [M in N]: O[N] extends Kind ? In<O[N]> : O[N] extends {
            kind: infer K extends Kind;
        } ? In<K> : never;
    };
}[ScalarOutput<O>];
export declare function scalarAt(formula: AnyFormula, path: string): Scalar;
export declare function scalarPaths(inputs: Inputs): string[];
export declare function withValueAt(given: unknown, path: string, value: unknown): Record<string, unknown>;
export declare function setAt(x: Record<string, unknown>, path: string, value: number): void;
export declare function scalarOutputs(output: Output): {
    name: string;
    kind: Kind;
}[];
export declare const untyped: <I extends Inputs, O extends Output>(formula: Formula<I, O>) => AnyFormula;
export declare const isNoAnswer: (error: unknown) => boolean;
export declare const answering: (kernel: (x: unknown) => unknown) => (x: unknown) => unknown;
