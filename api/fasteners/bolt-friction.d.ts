export declare const nutFactors: {
    black: import("../formula/provenance.js").Property<"ratio">;
    zinc: import("../formula/provenance.js").Property<"ratio">;
    lubricated: import("../formula/provenance.js").Property<"ratio">;
};
export declare const boltFrictions: {
    dry: import("../formula/provenance.js").Property<"ratio">;
    oiled: import("../formula/provenance.js").Property<"ratio">;
};
export declare const tighteningFactors: {
    torqueWrench: import("../formula/provenance.js").Property<"ratio">;
    byHand: import("../formula/provenance.js").Property<"ratio">;
};
