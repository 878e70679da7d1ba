import { type EvidenceLevel } from '../formula/index.js';
import { type Material, type PropertyName, type StrengthCurve } from './record.js';
export interface PropertyDocument {
    readonly typical: string;
    readonly low: string;
    readonly high: string;
    readonly source: {
        readonly level: EvidenceLevel;
        readonly where: string;
    };
    readonly conditions?: string;
}
export interface MaterialDocument {
    readonly name: string;
    readonly title: string;
    readonly aliases?: readonly string[];
    readonly family: string;
    readonly process: string;
    readonly strengthCurve?: StrengthCurve;
    readonly remarks?: readonly string[];
    readonly properties: {
        readonly [P in PropertyName]?: PropertyDocument;
    };
}
export declare function writeMaterial(material: Material): MaterialDocument;
export declare function readMaterial(document: unknown): Material;
export declare function materialJsonSchema(): Record<string, unknown>;
export declare function priorsOf(material: Material): {
    readonly share: number;
    readonly names: readonly PropertyName[];
};
