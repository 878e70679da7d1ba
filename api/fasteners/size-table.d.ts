import type { Source } from '../formula/index.js';
import { InputError, type Kind, Quantity, type UnitOf } from '../units/index.js';
export type Column = {
    [K in Kind]: readonly [kind: K, unit: UnitOf<K>];
}[Kind];
export interface Columns {
    readonly [name: string]: Column;
}
export type SizeRow<C extends Columns> = {
    readonly [N in keyof C]: Quantity<C[N][0]>;
};
export type SiRow<C extends Columns> = {
    readonly [N in keyof C]: number;
};
export interface SizeTable<C extends Columns, D extends string> {
    (designation: D | (string & {})): SizeRow<C>;
    readonly si: (designation: D | (string & {})) => SiRow<C>;
    readonly designations: readonly D[];
    readonly source: readonly Source[];
}
export interface SizeTableRecord<C extends Columns, D extends string> {
    readonly what: string;
    readonly columns: C;
    readonly source: readonly Source[];
    readonly rows: {
        readonly [designation in D]: readonly number[];
    };
}
export declare function sizeTable<const C extends Columns, const D extends string>(id: string, table: SizeTableRecord<C, D>): SizeTable<C, D>;
export declare function unknownDesignation(id: string, what: string, given: unknown, names: readonly string[]): InputError;
