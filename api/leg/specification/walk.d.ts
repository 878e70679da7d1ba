import type { Source } from '../../formula/index.js';
import { type FieldMeta } from './fields.js';
export interface LegDefault {
    readonly path: string;
    readonly value: string;
    readonly why: Source;
}
export declare function defaultsOf(schema: unknown, given: unknown, path?: string): LegDefault[];
export declare function salvaged(schema: unknown, given: unknown): unknown;
export declare function referencesOf(schema: unknown, data: unknown, kind: 'material', path?: string): {
    path: string;
    name: string;
}[];
export declare function placeOf(schema: unknown, path: readonly PropertyKey[]): {
    meta?: FieldMeta;
    names?: string[];
};
