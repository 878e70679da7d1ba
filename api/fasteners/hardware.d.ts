export declare const socketHead: import("./size-table.js").SizeTable<{
    readonly headDiameter: readonly ["length", "mm"];
    readonly headHeight: readonly ["length", "mm"];
    readonly keySize: readonly ["length", "mm"];
    readonly keyDepth: readonly ["length", "mm"];
    readonly bearingDiameter: readonly ["length", "mm"];
}, "M1.6" | "M2" | "M2.5" | "M3" | "M4" | "M5" | "M6" | "M8" | "M10" | "M12">;
export declare const hexHead: import("./size-table.js").SizeTable<{
    readonly acrossFlats: readonly ["length", "mm"];
    readonly headHeight: readonly ["length", "mm"];
    readonly bearingDiameter: readonly ["length", "mm"];
}, "M1.6" | "M2" | "M2.5" | "M3" | "M4" | "M5" | "M6" | "M8" | "M10" | "M12">;
export declare const hexNut: import("./size-table.js").SizeTable<{
    readonly acrossFlats: readonly ["length", "mm"];
    readonly acrossCorners: readonly ["length", "mm"];
    readonly height: readonly ["length", "mm"];
    readonly leastHeight: readonly ["length", "mm"];
    readonly bearingDiameter: readonly ["length", "mm"];
}, "M1.6" | "M2" | "M2.5" | "M3" | "M4" | "M5" | "M6" | "M8" | "M10" | "M12">;
export declare const lockNut: import("./size-table.js").SizeTable<{
    readonly height: readonly ["length", "mm"];
    readonly leastHeight: readonly ["length", "mm"];
    readonly acrossFlats: readonly ["length", "mm"];
}, "M3" | "M4" | "M5" | "M6" | "M8" | "M10" | "M12">;
export declare const prevailingTorque: import("./size-table.js").SizeTable<{
    readonly firstOnLargest: readonly ["torque", "N m"];
    readonly firstOffLeast: readonly ["torque", "N m"];
    readonly fifthOffLeast: readonly ["torque", "N m"];
}, "M3" | "M4" | "M5" | "M6" | "M8" | "M10" | "M12">;
export declare const washer: import("./size-table.js").SizeTable<{
    readonly holeDiameter: readonly ["length", "mm"];
    readonly outerDiameter: readonly ["length", "mm"];
    readonly thickness: readonly ["length", "mm"];
}, "M1.6" | "M2" | "M2.5" | "M3" | "M4" | "M5" | "M6" | "M8" | "M10" | "M12">;
export declare const largeWasher: import("./size-table.js").SizeTable<{
    readonly holeDiameter: readonly ["length", "mm"];
    readonly outerDiameter: readonly ["length", "mm"];
    readonly thickness: readonly ["length", "mm"];
}, "M3" | "M4" | "M5" | "M6" | "M8" | "M10" | "M12">;
export declare const clearanceHole: import("./size-table.js").SizeTable<{
    readonly fine: readonly ["length", "mm"];
    readonly medium: readonly ["length", "mm"];
    readonly coarse: readonly ["length", "mm"];
}, "M1.6" | "M2" | "M2.5" | "M3" | "M4" | "M5" | "M6" | "M8" | "M10" | "M12">;
