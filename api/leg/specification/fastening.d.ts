import * as z from 'zod';
export declare const pin: z.ZodObject<{
    size: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
    strength: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"stress">, import("../../units/quantity.js").In<"stress">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"stress">, import("../../units/quantity.js").In<"stress">>>>;
    forkThickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    tongueThickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    gap: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
}, z.core.$strict>;
export declare const boss: z.ZodObject<{
    material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
    outerDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    hole: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    holeScatter: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
    engagement: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    edgeDistance: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    axis: z.ZodPrefault<z.ZodType<"acrossLayers" | "alongLayers", "acrossLayers" | "alongLayers", z.core.$ZodTypeInternals<"acrossLayers" | "alongLayers", "acrossLayers" | "alongLayers">>>;
}, z.core.$strict>;
export declare const stackBolts: z.ZodObject<{
    thread: z.ZodType<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread, z.core.$ZodTypeInternals<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread>>;
    propertyClass: z.ZodType<string, string | number, z.core.$ZodTypeInternals<string, string | number>>;
    count: z.ZodType<number, number, z.core.$ZodTypeInternals<number, number>>;
    tighteningTorque: z.ZodType<import("../../units/quantity.js").Quantity<"torque">, import("../../units/quantity.js").In<"torque">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"torque">, import("../../units/quantity.js").In<"torque">>>;
    friction: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
    washers: z.ZodPrefault<z.ZodType<boolean, boolean, z.core.$ZodTypeInternals<boolean, boolean>>>;
    sleeves: z.ZodPrefault<z.ZodType<boolean, boolean, z.core.$ZodTypeInternals<boolean, boolean>>>;
    nut: z.ZodPrefault<z.ZodType<"pocket" | "openSlot" | "onWasher" | "tappedMetal", "pocket" | "openSlot" | "onWasher" | "tappedMetal", z.core.$ZodTypeInternals<"pocket" | "openSlot" | "onWasher" | "tappedMetal", "pocket" | "openSlot" | "onWasher" | "tappedMetal">>>;
    stack: z.ZodArray<z.ZodObject<{
        material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
        thickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    }, z.core.$strict>>;
    bossDiameter: z.ZodOptional<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
    retightened: z.ZodPrefault<z.ZodType<boolean, boolean, z.core.$ZodTypeInternals<boolean, boolean>>>;
    rows: z.ZodArray<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
    leverArm: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
}, z.core.$strict>;
export declare const motorBolts: z.ZodObject<{
    thread: z.ZodType<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread, z.core.$ZodTypeInternals<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread>>;
    propertyClass: z.ZodType<string, string | number, z.core.$ZodTypeInternals<string, string | number>>;
    count: z.ZodType<number, number, z.core.$ZodTypeInternals<number, number>>;
    tighteningTorque: z.ZodType<import("../../units/quantity.js").Quantity<"torque">, import("../../units/quantity.js").In<"torque">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"torque">, import("../../units/quantity.js").In<"torque">>>;
    friction: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
    washers: z.ZodPrefault<z.ZodType<boolean, boolean, z.core.$ZodTypeInternals<boolean, boolean>>>;
    sleeves: z.ZodPrefault<z.ZodType<boolean, boolean, z.core.$ZodTypeInternals<boolean, boolean>>>;
    nut: z.ZodPrefault<z.ZodType<"pocket" | "openSlot" | "onWasher" | "tappedMetal", "pocket" | "openSlot" | "onWasher" | "tappedMetal", z.core.$ZodTypeInternals<"pocket" | "openSlot" | "onWasher" | "tappedMetal", "pocket" | "openSlot" | "onWasher" | "tappedMetal">>>;
    stack: z.ZodArray<z.ZodObject<{
        material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
        thickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    }, z.core.$strict>>;
    bossDiameter: z.ZodOptional<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
    retightened: z.ZodPrefault<z.ZodType<boolean, boolean, z.core.$ZodTypeInternals<boolean, boolean>>>;
    circleDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
}, z.core.$strict>;
export declare const shaft: z.ZodObject<{
    thread: z.ZodType<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread, z.core.$ZodTypeInternals<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread>>;
    propertyClass: z.ZodType<string, string | number, z.core.$ZodTypeInternals<string, string | number>>;
    innerThread: z.ZodType<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread, z.core.$ZodTypeInternals<import("../../fasteners/thread-sizes.js").CoarseThread, import("../../fasteners/thread-sizes.js").CoarseThread>>;
    innerPropertyClass: z.ZodType<string, string | number, z.core.$ZodTypeInternals<string, string | number>>;
    innerEngagement: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    innerTighteningTorque: z.ZodType<import("../../units/quantity.js").Quantity<"torque">, import("../../units/quantity.js").In<"torque">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"torque">, import("../../units/quantity.js").In<"torque">>>;
    capThickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    capSpan: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    capMaterial: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
}, z.core.$strict>;
export declare const bearings: z.ZodObject<{
    size: z.ZodOptional<z.ZodType<"10x19x5" | "10x22x6" | "10x26x8" | "12x21x5", "10x19x5" | "10x22x6" | "10x26x8" | "12x21x5", z.core.$ZodTypeInternals<"10x19x5" | "10x22x6" | "10x26x8" | "12x21x5", "10x19x5" | "10x22x6" | "10x26x8" | "12x21x5">>>;
    own: z.ZodOptional<z.ZodObject<{
        bore: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        outerDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        width: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        staticRating: z.ZodType<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">>>;
        dynamicRating: z.ZodType<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">>>;
    }, z.core.$strict>>;
    spacing: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    overhang: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    seatMaterial: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
    seatInterference: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    retained: z.ZodPrefault<z.ZodType<boolean, boolean, z.core.$ZodTypeInternals<boolean, boolean>>>;
}, z.core.$strict>;
