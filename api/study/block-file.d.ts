import type { Column } from './table.js';
export interface EncodedBlock {
    readonly block: number;
    readonly rows: number;
    readonly columns: readonly (string | readonly string[])[];
}
export interface FileHeader {
    readonly format: 'limbwright-sweep';
    readonly version: 1;
    readonly plan: string;
    readonly formula: string;
    readonly rows: number;
    readonly blockRows: number;
    readonly shard: readonly [number, number];
}
export interface Block {
    readonly block: number;
    readonly rows: number;
    readonly columns: readonly (Float64Array | readonly string[])[];
}
export declare const encoded: ({ block, rows, columns }: Block) => EncodedBlock;
export declare const decoded: ({ block, rows, columns }: EncodedBlock) => Block;
export declare function putInto({ columns: packed }: Block, columns: readonly Column[], from: number): void;
export declare const fits: ({ rows, columns: packed }: EncodedBlock, columns: readonly Column[], wanted: number) => boolean;
export declare function digest(text: string): Promise<string>;
export declare function lineOf(data: FileHeader | EncodedBlock): Promise<string>;
export declare function readLine(line: string): Promise<unknown>;
export interface FileContent {
    readonly header: FileHeader | undefined;
    readonly blocks: ReadonlyMap<number, EncodedBlock>;
    readonly goodBytes: number;
    readonly damaged: number;
}
export declare function readContent(text: string): Promise<FileContent>;
