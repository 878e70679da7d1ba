export declare function legJsonSchema(): Record<string, unknown>;
