import type { Kind } from '../units/index.js';
export declare function markdownTable(header: readonly string[], rows: readonly (readonly string[])[]): string;
export declare const spreadKind: (kind: Kind) => Kind;
export declare const percentText: (share: number) => string;
export declare abstract class Printable {
    abstract toMarkdown(): string;
    toString(): string;
}
