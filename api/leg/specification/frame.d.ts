import * as z from 'zod';
export declare const robot: z.ZodObject<{
    mass: z.ZodType<import("../../units/quantity.js").Quantity<"mass">, import("../../units/quantity.js").In<"mass">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"mass">, import("../../units/quantity.js").In<"mass">>>;
    legs: z.ZodPrefault<z.ZodType<number, number, z.core.$ZodTypeInternals<number, number>>>;
    standHeight: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    hipSpacing: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
    hipTrack: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
    centreOfMassHeight: z.ZodOptional<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
}, z.core.$strict>;
export declare const links: z.ZodObject<{
    hipOffset: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    upper: z.ZodObject<{
        length: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        mass: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"mass">, import("../../units/quantity.js").In<"mass">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"mass">, import("../../units/quantity.js").In<"mass">>>>;
        material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
        width: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        depth: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        wall: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    }, z.core.$strict>;
    lower: z.ZodObject<{
        length: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        mass: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"mass">, import("../../units/quantity.js").In<"mass">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"mass">, import("../../units/quantity.js").In<"mass">>>>;
        material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
        width: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        depth: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        wall: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    }, z.core.$strict>;
}, z.core.$strict>;
export declare const joints: z.ZodObject<{
    sidewaysHip: z.ZodObject<{
        from: z.ZodType<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">>>;
        to: z.ZodType<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">>>;
        holdingTorque: z.ZodType<import("../../units/quantity.js").Quantity<"torque">, import("../../units/quantity.js").In<"torque">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"torque">, import("../../units/quantity.js").In<"torque">>>;
        stiffness: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"torsionalStiffness">, import("../../units/quantity.js").In<"torsionalStiffness">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"torsionalStiffness">, import("../../units/quantity.js").In<"torsionalStiffness">>>>;
    }, z.core.$strict>;
    hip: z.ZodObject<{
        from: z.ZodType<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">>>;
        to: z.ZodType<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">>>;
    }, z.core.$strict>;
    knee: z.ZodObject<{
        from: z.ZodType<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">>>;
        to: z.ZodType<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">>>;
    }, z.core.$strict>;
}, z.core.$strict>;
export declare const foot: z.ZodObject<{
    toes: z.ZodPrefault<z.ZodType<number, number, z.core.$ZodTypeInternals<number, number>>>;
    toeLength: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    toeThickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    toeWidth: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
    material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
    lift: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">>>>;
    groundFriction: z.ZodPrefault<z.ZodType<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band, z.core.$ZodTypeInternals<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band>>>;
}, z.core.$strict>;
