import * as z from 'zod';
import type { Source } from '../../formula/index.js';
import { type In, type Kind, Quantity } from '../../units/index.js';
export interface FieldMeta {
    readonly meaning: string;
    readonly accepts: string;
    readonly json: Record<string, unknown>;
    readonly refersTo?: 'material';
    readonly fallback?: Fallback;
}
export interface Fallback {
    readonly value: unknown;
    readonly why: Source;
}
export declare const metaOf: (schema: object) => FieldMeta | undefined;
export declare class Refusal extends Error {
}
export declare function field<Out, Given>(meta: FieldMeta, readValue: (given: unknown) => Out): z.ZodType<Out, Given>;
export declare function silent<Out, Given>(schema: z.ZodType<Out, Given>, value: NoInfer<Given>, why: string, level?: Source['level']): z.ZodPrefault<z.ZodType<Out, Given>>;
export declare function maybe<Out, Given>(schema: z.ZodType<Out, Given>): z.ZodOptional<z.ZodType<Out, Given>>;
export interface FieldLimits<K extends Kind> {
    readonly min?: In<K> | 0;
    readonly max?: In<K>;
    readonly above?: In<K> | 0;
    readonly below?: In<K>;
}
export declare function q<K extends Kind>(kind: K, limits: FieldLimits<K>, meaning: string): z.ZodType<Quantity<K>, In<K>>;
export declare function word<const T extends string>(words: readonly T[], meaning: string): z.ZodType<T, T>;
export declare function text(meaning: string): z.ZodType<string, string>;
export declare function whole(min: number, max: number, meaning: string): z.ZodType<number, number>;
export declare function flag(meaning: string): z.ZodType<boolean, boolean>;
export declare function designation<T extends string>(what: string, names: () => readonly T[], meaning: string): z.ZodType<T, T>;
export declare function meant(given: unknown, names: Iterable<string>): string;
export interface Band {
    readonly low: number;
    readonly typical: number;
    readonly high: number;
}
export declare function band(max: number, meaning: string): z.ZodType<Band, Band | readonly [number, number, number]>;
