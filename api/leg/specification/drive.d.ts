import * as z from 'zod';
export declare const cord: z.ZodObject<{
    fibre: z.ZodType<import("../../capstan/cord-table.js").FibreName, import("../../capstan/cord-table.js").FibreName, z.core.$ZodTypeInternals<import("../../capstan/cord-table.js").FibreName, import("../../capstan/cord-table.js").FibreName>>;
    diameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    breakingStrength: z.ZodType<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">>>;
    axialRigidity: z.ZodType<import("../../units/quantity.js").Quantity<"axialRigidity">, import("../../units/quantity.js").In<"axialRigidity">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"axialRigidity">, import("../../units/quantity.js").In<"axialRigidity">>>;
    thermalExpansion: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"thermalExpansion">, import("../../units/quantity.js").In<"thermalExpansion">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"thermalExpansion">, import("../../units/quantity.js").In<"thermalExpansion">>>>;
    designFactor: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
    leastBendRatio: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
    pretensionLeft: z.ZodPrefault<z.ZodType<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band, z.core.$ZodTypeInternals<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band>>>;
}, z.core.$strict>;
export declare const drive: z.ZodObject<{
    arrangement: z.ZodPrefault<z.ZodType<"crossed" | "open", "crossed" | "open", z.core.$ZodTypeInternals<"crossed" | "open", "crossed" | "open">>>;
    pinion: z.ZodObject<{
        wraps: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"count">, import("../../units/quantity.js").In<"count">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"count">, import("../../units/quantity.js").In<"count">>>>;
        length: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        grooveDiameter: z.ZodOptional<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        centreLineRadius: z.ZodOptional<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
    }, z.core.$strict>;
    drum: z.ZodObject<{
        material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
        bore: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        length: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        groovePitch: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        throughBolts: z.ZodPrefault<z.ZodType<number, number, z.core.$ZodTypeInternals<number, number>>>;
        throughBoltThread: z.ZodPrefault<z.ZodType<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread, z.core.$ZodTypeInternals<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread>>>;
        throughBoltClampLoad: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">>>>;
        grooveDiameter: z.ZodOptional<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        centreLineRadius: z.ZodOptional<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
    }, z.core.$strict>;
    centreDistance: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    cord: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
    pretension: z.ZodType<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">>>;
    friction: z.ZodPrefault<z.ZodType<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band, z.core.$ZodTypeInternals<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band>>>;
    hold: z.ZodPrefault<z.ZodType<"frictionOnly" | "clampedMidPinion", "frictionOnly" | "clampedMidPinion", z.core.$ZodTypeInternals<"frictionOnly" | "clampedMidPinion", "frictionOnly" | "clampedMidPinion">>>;
    ends: z.ZodPrefault<z.ZodType<"splice" | "swagedSleeve" | "bondedFerrule" | "knot", "splice" | "swagedSleeve" | "bondedFerrule" | "knot", z.core.$ZodTypeInternals<"splice" | "swagedSleeve" | "bondedFerrule" | "knot", "splice" | "swagedSleeve" | "bondedFerrule" | "knot">>>;
    endRetention: z.ZodOptional<z.ZodType<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band, z.core.$ZodTypeInternals<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band>>>;
    anchor: z.ZodObject<{
        postDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        postLength: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        edgeDistance: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    }, z.core.$strict>;
    tensioner: z.ZodObject<{
        thread: z.ZodType<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread, z.core.$ZodTypeInternals<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread>>;
        travel: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        slackAtAssembly: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
    }, z.core.$strict>;
    efficiency: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
}, z.core.$strict>;
export declare const bondedEnd: z.ZodObject<{
    length: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    socketDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    adhesive: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
    adhesiveShearModulus: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"modulus">, import("../../units/quantity.js").In<"modulus">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"modulus">, import("../../units/quantity.js").In<"modulus">>>>;
    adhesiveShearStrength: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"stress">, import("../../units/quantity.js").In<"stress">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"stress">, import("../../units/quantity.js").In<"stress">>>>;
    mechanicalLock: z.ZodPrefault<z.ZodType<boolean, boolean, z.core.$ZodTypeInternals<boolean, boolean>>>;
}, z.core.$strict>;
