export declare const SHAFT_ZONES: readonly ["c11", "d9", "e8", "f6", "f7", "f8", "g5", "g6", "h5", "h6", "h7", "h8", "h9", "h10", "h11", "h12", "h13", "js5", "js6", "js7", "js9", "k5", "k6", "k7", "m5", "m6", "m7", "n5", "n6", "n7", "p5", "p6", "p7", "r6", "r7", "s6", "s7", "u6", "u7"];
export declare const HOLE_ZONES: readonly ["C11", "D9", "D10", "E8", "E9", "F7", "F8", "G6", "G7", "H5", "H6", "H7", "H8", "H9", "H10", "H11", "H12", "H13", "JS6", "JS7", "JS8", "JS9", "K6", "K7", "K8", "M6", "M7", "M8", "N6", "N7", "N8", "P6", "P7", "R6", "R7", "S6", "S7", "U7"];
export declare const isoTolerance: import("../formula/formula.js").Formula<{
    readonly diameter: {
        readonly kind: "length";
        readonly min: "1 mm";
        readonly max: "50 mm";
    };
    readonly zone: {
        readonly oneOf: readonly ["c11", "d9", "e8", "f6", "f7", "f8", "g5", "g6", "h5", "h6", "h7", "h8", "h9", "h10", "h11", "h12", "h13", "js5", "js6", "js7", "js9", "k5", "k6", "k7", "m5", "m6", "m7", "n5", "n6", "n7", "p5", "p6", "p7", "r6", "r7", "s6", "s7", "u6", "u7", "C11", "D9", "D10", "E8", "E9", "F7", "F8", "G6", "G7", "H5", "H6", "H7", "H8", "H9", "H10", "H11", "H12", "H13", "JS6", "JS7", "JS8", "JS9", "K6", "K7", "K8", "M6", "M7", "M8", "N6", "N7", "N8", "P6", "P7", "R6", "R7", "S6", "S7", "U7"];
    };
}, {
    readonly upper: "length";
    readonly lower: "length";
}>;
export declare const isoFit: import("../formula/formula.js").Formula<{
    readonly diameter: {
        readonly kind: "length";
        readonly min: "1 mm";
        readonly max: "50 mm";
    };
    readonly hole: {
        readonly oneOf: readonly ["C11", "D9", "D10", "E8", "E9", "F7", "F8", "G6", "G7", "H5", "H6", "H7", "H8", "H9", "H10", "H11", "H12", "H13", "JS6", "JS7", "JS8", "JS9", "K6", "K7", "K8", "M6", "M7", "M8", "N6", "N7", "N8", "P6", "P7", "R6", "R7", "S6", "S7", "U7"];
    };
    readonly shaft: {
        readonly oneOf: readonly ["c11", "d9", "e8", "f6", "f7", "f8", "g5", "g6", "h5", "h6", "h7", "h8", "h9", "h10", "h11", "h12", "h13", "js5", "js6", "js7", "js9", "k5", "k6", "k7", "m5", "m6", "m7", "n5", "n6", "n7", "p5", "p6", "p7", "r6", "r7", "s6", "s7", "u6", "u7"];
    };
}, {
    readonly largestInterference: "length";
    readonly smallestInterference: "length";
    readonly fit: {
        readonly oneOf: readonly ["clearance", "transition", "interference"];
    };
}>;
