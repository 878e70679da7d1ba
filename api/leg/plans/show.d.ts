export declare function table(head: readonly string[], rows: readonly (readonly unknown[])[]): string;
export declare const points: (lines: readonly string[]) => string;
export declare const page: (parts: readonly string[]) => string;
export declare function displayed<T extends object>(data: T, markdown: (data: T) => string): T;
export declare function valueText(value: unknown): string;
