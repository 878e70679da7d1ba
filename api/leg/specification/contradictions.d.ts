import { type Issue, type Quantity } from '../../units/index.js';
import type { LegData } from './schema.js';
export type Partly<T> = T extends Quantity | string | number | boolean ? T | undefined : T extends readonly (infer E)[] ? readonly Partly<E>[] | undefined : {
    readonly [K in keyof T]?: Partly<T[K]>;
} | undefined;
export declare function contradictions(data: Partly<LegData>): Issue[];
