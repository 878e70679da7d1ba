import { type Material } from '../../materials/index.js';
export type OwnValue = string | {
    readonly typical: string;
    readonly low: string;
    readonly high: string;
    readonly source?: string;
    readonly conditions?: string;
};
export interface OwnMaterial {
    readonly basedOn: string;
    readonly [property: string]: OwnValue;
}
export declare const ownMaterial: import("zod").ZodType<OwnMaterial, OwnMaterial, import("zod/v4/core").$ZodTypeInternals<OwnMaterial, OwnMaterial>>;
export declare function materialFrom(record: OwnMaterial): Material;
