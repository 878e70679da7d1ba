export declare function readDocument(where: string, given: unknown): Record<string, unknown>;
