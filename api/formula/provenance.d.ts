import { type In, type Kind, type Note, Quantity } from '../units/index.js';
export type EvidenceLevel = 'published' | 'standard' | 'referenceLibrary' | 'computed' | 'commonPractice' | 'memory' | 'assumption';
export interface Source {
    readonly level: EvidenceLevel;
    readonly where: string;
}
export declare const isPrior: (source: Source) => boolean;
export declare class Property<K extends Kind = Kind> extends Quantity<K> {
    readonly low: number;
    readonly high: number;
    readonly source: Source;
    readonly conditions: string;
    constructor(typical: number, kind: K, low: number, high: number, source: Source, conditions: string, notes?: readonly Note[]);
    get lowest(): Quantity<K>;
    get highest(): Quantity<K>;
}
export interface PropertyRecord<K extends Kind> {
    readonly typical: In<K>;
    readonly low: In<K>;
    readonly high: In<K>;
    readonly source: Source;
    readonly conditions?: string;
}
export declare const isProperty: (given: unknown) => given is Property;
export declare function property<K extends Kind>(kind: K, record: PropertyRecord<NoInfer<K>>): Property<K>;
