import { type Kind, type UnitOf } from './kinds.js';
export interface Note {
    readonly formula: string;
    readonly text: string;
}
export interface Foreign {
    toNumber(unit: string): number;
    readonly kind?: never;
}
export type Plain = 'ratio' | 'count' | 'strain';
export type In<K extends Kind> = Quantity<K> | `${number} ${UnitOf<K>}` | readonly [number, UnitOf<K>] | Foreign | (K extends Plain ? number : never);
export interface QuantityJSON<K extends string = string> {
    readonly kind: K;
    readonly value: number;
    readonly unit: string;
}
type Difference<K> = K extends 'temperature' ? 'temperatureDifference' : K;
type Addend<K extends Kind | 'derived'> = K extends 'temperature' ? Quantity<'temperatureDifference'> : Quantity<K>;
export declare class Quantity<K extends Kind | 'derived' = Kind | 'derived'> {
    readonly si: number;
    readonly kind: K;
    readonly dim: number;
    readonly notes?: readonly Note[] | undefined;
    constructor(si: number, kind: K, dim?: number, notes?: readonly Note[] | undefined);
    in(unit: K extends Kind ? UnitOf<K> : never): number;
    plus(other: Addend<K>): Quantity<K>;
    minus(other: Quantity<'temperatureDifference'> & Addend<K>): Quantity<K>;
    minus(other: Quantity<K>): Quantity<K extends Kind ? Difference<K> : K>;
    times(other: number): Quantity<K>;
    times(other: Quantity): Quantity<'derived'>;
    over(other: number): Quantity<K>;
    over(other: Quantity): Quantity<'derived'>;
    sqrt(): Quantity<'derived'>;
    as<J extends Kind>(kind: J): Quantity<J>;
    toString(): string;
    toJSON(): QuantityJSON;
    private unlike;
    private scalable;
}
export declare function joinNotes(a: {
    notes?: readonly Note[] | undefined;
}, b: {
    notes?: readonly Note[] | undefined;
}): readonly Note[] | undefined;
export declare function significant(x: number, digits?: number): string;
export declare class UnreadableQuantity extends Error {
    name: string;
}
export declare function read(kind: Kind, given: unknown): number;
export declare const foreignUnit: (kind: Kind) => string;
export declare const kindWords: (kind: string) => string;
export declare function quantity<K extends Kind>(kind: K, given: In<NoInfer<K>>): Quantity<K>;
export declare function quantityFromJSON(data: unknown): Quantity<Kind>;
export {};
