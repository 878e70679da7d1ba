import { type Kind } from '../../units/index.js';
export interface LogColumn {
    readonly name: string;
    readonly kind: Kind;
    readonly unit: string;
}
export interface LogRemark {
    readonly log: string;
    readonly line: number | undefined;
    readonly what: 'gap' | 'unreadable' | 'unit' | 'spike' | 'order' | 'column' | 'few readings';
    readonly message: string;
}
export interface ReadLog {
    readonly rows: readonly (readonly number[])[];
    readonly lines: readonly number[];
    readonly remarks: readonly LogRemark[];
}
export declare const headerOf: (columns: readonly LogColumn[]) => string;
export declare function readLog(log: string, text: string, columns: readonly LogColumn[]): ReadLog;
