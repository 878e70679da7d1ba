import { type SiThreadSizes } from '../../fasteners/index.js';
import { type Material } from '../../materials/index.js';
import { type OwnMaterial } from './own-material.js';
export type MaterialReference = string;
export declare const material: (meaning: string) => import("zod").ZodType<string, string, import("zod/v4/core").$ZodTypeInternals<string, string>>;
export declare const materialOf: (reference: MaterialReference, own?: Readonly<Record<string, OwnMaterial>>) => Material;
export declare function materialProblem(reference: string, own: readonly string[]): string | undefined;
export declare const thread: (meaning: string) => import("zod").ZodType<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread, import("zod/v4/core").$ZodTypeInternals<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread>>;
export declare const threadOf: (name: string) => SiThreadSizes;
export declare const propertyClass: (meaning: string) => import("zod").ZodType<string, string | number, import("zod/v4/core").$ZodTypeInternals<string, string | number>>;
export interface PinSize {
    readonly diameter: number;
    readonly zone: 'm6' | 'h8';
    readonly hardened: boolean;
}
export declare const pinSize: (meaning: string) => import("zod").ZodType<string, string, import("zod/v4/core").$ZodTypeInternals<string, string>>;
export declare function pinOf(name: string): PinSize;
export interface BearingNumbers {
    readonly bore: number;
    readonly outerDiameter: number;
    readonly width: number;
    readonly staticRating: number;
    readonly dynamicRating: number;
}
export declare const bearingName: (meaning: string) => import("zod").ZodType<"10x19x5" | "10x22x6" | "10x26x8" | "12x21x5", "10x19x5" | "10x22x6" | "10x26x8" | "12x21x5", import("zod/v4/core").$ZodTypeInternals<"10x19x5" | "10x22x6" | "10x26x8" | "12x21x5", "10x19x5" | "10x22x6" | "10x26x8" | "12x21x5">>;
export declare function bearingOf(size: string | undefined, own: BearingNumbers | undefined): BearingNumbers | undefined;
export declare const fibre: (meaning: string) => import("zod").ZodType<import("../../capstan/cord-table.js").FibreName, import("../../capstan/cord-table.js").FibreName, import("zod/v4/core").$ZodTypeInternals<import("../../capstan/cord-table.js").FibreName, import("../../capstan/cord-table.js").FibreName>>;
export declare const cordName: (meaning: string) => import("zod").ZodType<string, string, import("zod/v4/core").$ZodTypeInternals<string, string>>;
