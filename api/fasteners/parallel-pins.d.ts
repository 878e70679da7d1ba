export declare const parallelPin: import("./size-table.js").SizeTable<{
    readonly diameter: readonly ["length", "mm"];
    readonly endLength: readonly ["length", "mm"];
    readonly shortest: readonly ["length", "mm"];
    readonly longest: readonly ["length", "mm"];
}, "1" | "2" | "3" | "4" | "1.5" | "5" | "6" | "8" | "12" | "10" | "16" | "20" | "2.5">;
