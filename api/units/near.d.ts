export declare function nearName(given: string, names: Iterable<string>): string | undefined;
export declare function nearNames(given: string, names: Iterable<string>, count?: number): string[];
