import * as z from 'zod';
export declare const SCHEMA_VERSION = 3;
export declare const legSchema: z.ZodObject<{
    schemaVersion: z.ZodPrefault<z.ZodType<number, number, z.core.$ZodTypeInternals<number, number>>>;
    name: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
    remark: z.ZodOptional<z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>>;
    robot: z.ZodObject<{
        mass: z.ZodType<import("../../units/quantity.js").Quantity<"mass">, import("../../units/quantity.js").In<"mass">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"mass">, import("../../units/quantity.js").In<"mass">>>;
        legs: z.ZodPrefault<z.ZodType<number, number, z.core.$ZodTypeInternals<number, number>>>;
        standHeight: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        hipSpacing: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        hipTrack: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        centreOfMassHeight: z.ZodOptional<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
    }, z.core.$strict>;
    links: z.ZodObject<{
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
    joints: z.ZodObject<{
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
    drives: z.ZodObject<{
        hip: z.ZodObject<{
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
        knee: z.ZodObject<{
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
    }, z.core.$strict>;
    materials: z.ZodOptional<z.ZodRecord<z.ZodString, z.ZodType<import("./own-material.js").OwnMaterial, import("./own-material.js").OwnMaterial, z.core.$ZodTypeInternals<import("./own-material.js").OwnMaterial, import("./own-material.js").OwnMaterial>>>>;
    cords: z.ZodRecord<z.ZodString, z.ZodObject<{
        fibre: z.ZodType<import("../../capstan/cord-table.js").FibreName, import("../../capstan/cord-table.js").FibreName, z.core.$ZodTypeInternals<import("../../capstan/cord-table.js").FibreName, import("../../capstan/cord-table.js").FibreName>>;
        diameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        breakingStrength: z.ZodType<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"force">, import("../../units/quantity.js").In<"force">>>;
        axialRigidity: z.ZodType<import("../../units/quantity.js").Quantity<"axialRigidity">, import("../../units/quantity.js").In<"axialRigidity">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"axialRigidity">, import("../../units/quantity.js").In<"axialRigidity">>>;
        thermalExpansion: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"thermalExpansion">, import("../../units/quantity.js").In<"thermalExpansion">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"thermalExpansion">, import("../../units/quantity.js").In<"thermalExpansion">>>>;
        designFactor: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
        leastBendRatio: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
        pretensionLeft: z.ZodPrefault<z.ZodType<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band, z.core.$ZodTypeInternals<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band>>>;
    }, z.core.$strict>>;
    bondedEnd: z.ZodOptional<z.ZodObject<{
        length: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        socketDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        adhesive: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
        adhesiveShearModulus: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"modulus">, import("../../units/quantity.js").In<"modulus">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"modulus">, import("../../units/quantity.js").In<"modulus">>>>;
        adhesiveShearStrength: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"stress">, import("../../units/quantity.js").In<"stress">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"stress">, import("../../units/quantity.js").In<"stress">>>>;
        mechanicalLock: z.ZodPrefault<z.ZodType<boolean, boolean, z.core.$ZodTypeInternals<boolean, boolean>>>;
    }, z.core.$strict>>;
    pins: z.ZodObject<{
        hip: z.ZodObject<{
            size: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
            strength: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"stress">, import("../../units/quantity.js").In<"stress">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"stress">, import("../../units/quantity.js").In<"stress">>>>;
            forkThickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            tongueThickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            gap: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        }, z.core.$strict>;
        knee: z.ZodObject<{
            size: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
            strength: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"stress">, import("../../units/quantity.js").In<"stress">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"stress">, import("../../units/quantity.js").In<"stress">>>>;
            forkThickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            tongueThickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            gap: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        }, z.core.$strict>;
    }, z.core.$strict>;
    bosses: z.ZodObject<{
        hip: z.ZodObject<{
            material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
            outerDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            hole: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            holeScatter: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
            engagement: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            edgeDistance: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            axis: z.ZodPrefault<z.ZodType<"acrossLayers" | "alongLayers", "acrossLayers" | "alongLayers", z.core.$ZodTypeInternals<"acrossLayers" | "alongLayers", "acrossLayers" | "alongLayers">>>;
        }, z.core.$strict>;
        knee: z.ZodObject<{
            material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
            outerDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            hole: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            holeScatter: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
            engagement: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            edgeDistance: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
            axis: z.ZodPrefault<z.ZodType<"acrossLayers" | "alongLayers", "acrossLayers" | "alongLayers", z.core.$ZodTypeInternals<"acrossLayers" | "alongLayers", "acrossLayers" | "alongLayers">>>;
        }, z.core.$strict>;
    }, z.core.$strict>;
    bolts: z.ZodObject<{
        stack: z.ZodObject<{
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
        motor: z.ZodObject<{
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
    }, z.core.$strict>;
    shaft: z.ZodObject<{
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
    bearings: z.ZodObject<{
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
    motor: z.ZodObject<{
        speedConstant: z.ZodType<import("../../units/quantity.js").Quantity<"speedConstant">, import("../../units/quantity.js").In<"speedConstant">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"speedConstant">, import("../../units/quantity.js").In<"speedConstant">>>;
        speedConstantBasis: z.ZodPrefault<z.ZodType<"spunPeakLineToLine" | "noLoadSixStep" | "catalogue", "spunPeakLineToLine" | "noLoadSixStep" | "catalogue", z.core.$ZodTypeInternals<"spunPeakLineToLine" | "noLoadSixStep" | "catalogue", "spunPeakLineToLine" | "noLoadSixStep" | "catalogue">>>;
        terminalResistance: z.ZodType<import("../../units/quantity.js").Quantity<"electricalResistance">, import("../../units/quantity.js").In<"electricalResistance">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"electricalResistance">, import("../../units/quantity.js").In<"electricalResistance">>>;
        noLoadCurrent: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"current">, import("../../units/quantity.js").In<"current">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"current">, import("../../units/quantity.js").In<"current">>>>;
        noLoadVoltage: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"voltage">, import("../../units/quantity.js").In<"voltage">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"voltage">, import("../../units/quantity.js").In<"voltage">>>>;
        polePairs: z.ZodOptional<z.ZodType<import("../../units/quantity.js").Quantity<"count">, import("../../units/quantity.js").In<"count">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"count">, import("../../units/quantity.js").In<"count">>>>;
        phaseInductance: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"inductance">, import("../../units/quantity.js").In<"inductance">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"inductance">, import("../../units/quantity.js").In<"inductance">>>>;
        encoderCounts: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"count">, import("../../units/quantity.js").In<"count">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"count">, import("../../units/quantity.js").In<"count">>>>;
        rotorInertia: z.ZodType<import("../../units/quantity.js").Quantity<"momentOfInertia">, import("../../units/quantity.js").In<"momentOfInertia">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"momentOfInertia">, import("../../units/quantity.js").In<"momentOfInertia">>>;
        mass: z.ZodType<import("../../units/quantity.js").Quantity<"mass">, import("../../units/quantity.js").In<"mass">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"mass">, import("../../units/quantity.js").In<"mass">>>;
        specificHeat: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"specificHeat">, import("../../units/quantity.js").In<"specificHeat">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"specificHeat">, import("../../units/quantity.js").In<"specificHeat">>>>;
        canDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        canLength: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        mountInnerDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        mountOuterDiameter: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        windingToMount: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"thermalResistance">, import("../../units/quantity.js").In<"thermalResistance">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"thermalResistance">, import("../../units/quantity.js").In<"thermalResistance">>>>;
        mountToCan: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"thermalResistance">, import("../../units/quantity.js").In<"thermalResistance">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"thermalResistance">, import("../../units/quantity.js").In<"thermalResistance">>>>;
        canEmissivity: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
        magnetSuffix: z.ZodPrefault<z.ZodType<"H" | "none" | "M" | "SH" | "UH" | "EH", "H" | "none" | "M" | "SH" | "UH" | "EH", z.core.$ZodTypeInternals<"H" | "none" | "M" | "SH" | "UH" | "EH", "H" | "none" | "M" | "SH" | "UH" | "EH">>>;
        windingClass: z.ZodPrefault<z.ZodType<"N" | "A" | "H" | "E" | "B" | "F", "N" | "A" | "H" | "E" | "B" | "F", z.core.$ZodTypeInternals<"N" | "A" | "H" | "E" | "B" | "F", "N" | "A" | "H" | "E" | "B" | "F">>>;
    }, z.core.$strict>;
    plate: z.ZodObject<{
        material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
        thickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        width: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        height: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        emissivity: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
        contactConductance: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"heatTransferCoefficient">, import("../../units/quantity.js").In<"heatTransferCoefficient">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"heatTransferCoefficient">, import("../../units/quantity.js").In<"heatTransferCoefficient">>>>;
    }, z.core.$strict>;
    sink: z.ZodOptional<z.ZodObject<{
        material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
        thickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        width: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        height: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        emissivity: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
    }, z.core.$strict>>;
    controller: z.ZodObject<{
        onResistance: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"electricalResistance">, import("../../units/quantity.js").In<"electricalResistance">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"electricalResistance">, import("../../units/quantity.js").In<"electricalResistance">>>>;
        switchingLoss: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"power">, import("../../units/quantity.js").In<"power">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"power">, import("../../units/quantity.js").In<"power">>>>;
        currentLimit: z.ZodType<import("../../units/quantity.js").Quantity<"peakPhaseCurrent">, import("../../units/quantity.js").In<"peakPhaseCurrent">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"peakPhaseCurrent">, import("../../units/quantity.js").In<"peakPhaseCurrent">>>;
        temperatureLimit: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">>>>;
        toAir: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"thermalResistance">, import("../../units/quantity.js").In<"thermalResistance">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"thermalResistance">, import("../../units/quantity.js").In<"thermalResistance">>>>;
    }, z.core.$strict>;
    foot: z.ZodObject<{
        toes: z.ZodPrefault<z.ZodType<number, number, z.core.$ZodTypeInternals<number, number>>>;
        toeLength: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        toeThickness: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        toeWidth: z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>;
        material: z.ZodType<string, string, z.core.$ZodTypeInternals<string, string>>;
        lift: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">>>>;
        groundFriction: z.ZodPrefault<z.ZodType<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band, z.core.$ZodTypeInternals<import("./fields.js").Band, readonly [number, number, number] | import("./fields.js").Band>>>;
    }, z.core.$strict>;
    supply: z.ZodObject<{
        voltage: z.ZodType<import("../../units/quantity.js").Quantity<"voltage">, import("../../units/quantity.js").In<"voltage">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"voltage">, import("../../units/quantity.js").In<"voltage">>>;
        internalResistance: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"electricalResistance">, import("../../units/quantity.js").In<"electricalResistance">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"electricalResistance">, import("../../units/quantity.js").In<"electricalResistance">>>>;
        currentLimit: z.ZodType<import("../../units/quantity.js").Quantity<"current">, import("../../units/quantity.js").In<"current">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"current">, import("../../units/quantity.js").In<"current">>>;
        takesBack: z.ZodPrefault<z.ZodType<boolean, boolean, z.core.$ZodTypeInternals<boolean, boolean>>>;
    }, z.core.$strict>;
    environment: z.ZodPrefault<z.ZodObject<{
        normalAir: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">>>>;
        hotAir: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">>>>;
        coldAir: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">>>>;
        assemblyTemperature: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">>>>;
        surroundings: z.ZodOptional<z.ZodType<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">>>>;
        wind: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"velocity">, import("../../units/quantity.js").In<"velocity">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"velocity">, import("../../units/quantity.js").In<"velocity">>>>;
        altitude: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        humidity: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
    }, z.core.$strict>>;
    print: z.ZodPrefault<z.ZodObject<{
        lineWidth: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        walls: z.ZodPrefault<z.ZodType<number, number, z.core.$ZodTypeInternals<number, number>>>;
        infill: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
    }, z.core.$strict>>;
    usage: z.ZodPrefault<z.ZodObject<{
        walk: z.ZodPrefault<z.ZodObject<{
            speed: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"velocity">, import("../../units/quantity.js").In<"velocity">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"velocity">, import("../../units/quantity.js").In<"velocity">>>>;
            dutyFactor: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
            stepLength: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
            clearance: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        }, z.core.$strict>>;
        trot: z.ZodPrefault<z.ZodObject<{
            speed: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"velocity">, import("../../units/quantity.js").In<"velocity">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"velocity">, import("../../units/quantity.js").In<"velocity">>>>;
            dutyFactor: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
            stepLength: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
            clearance: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        }, z.core.$strict>>;
        traction: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
        hopHeight: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        dropHeight: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        slope: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"angle">, import("../../units/quantity.js").In<"angle">>>>;
        standingTime: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"time">, import("../../units/quantity.js").In<"time">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"time">, import("../../units/quantity.js").In<"time">>>>;
        stallTime: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"time">, import("../../units/quantity.js").In<"time">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"time">, import("../../units/quantity.js").In<"time">>>>;
        walkingTime: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"time">, import("../../units/quantity.js").In<"time">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"time">, import("../../units/quantity.js").In<"time">>>>;
        stridesPerDay: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"count">, import("../../units/quantity.js").In<"count">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"count">, import("../../units/quantity.js").In<"count">>>>;
        days: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"count">, import("../../units/quantity.js").In<"count">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"count">, import("../../units/quantity.js").In<"count">>>>;
        shelfTime: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"time">, import("../../units/quantity.js").In<"time">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"time">, import("../../units/quantity.js").In<"time">>>>;
        shelfTemperature: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"temperature">, import("../../units/quantity.js").In<"temperature">>>>;
        landingTravel: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"length">, import("../../units/quantity.js").In<"length">>>>;
        wantedReserve: z.ZodPrefault<z.ZodType<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">, z.core.$ZodTypeInternals<import("../../units/quantity.js").Quantity<"ratio">, import("../../units/quantity.js").In<"ratio">>>>;
    }, z.core.$strict>>;
}, z.core.$strict>;
export type LegSpecification = z.input<typeof legSchema>;
export type LegData = z.output<typeof legSchema>;
