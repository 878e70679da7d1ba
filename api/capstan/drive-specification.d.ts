import { type Given, type Si } from '../formula/index.js';
import { type In } from '../units/index.js';
export declare const RANGE: {
    readonly fields: {
        readonly low: {
            readonly kind: "ratio";
            readonly above: 0;
        };
        readonly high: {
            readonly kind: "ratio";
            readonly above: 0;
        };
    };
};
declare const SPECIFICATION: {
    readonly arrangement: {
        readonly oneOf: readonly ["crossed", "open"];
        readonly default: "crossed";
    };
    readonly pinionRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly drumRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly centreDistance: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly pinionTurns: {
        readonly kind: "count";
        readonly min: 0;
    };
    readonly drumWrap: {
        readonly kind: "angle";
        readonly above: 0;
    };
    readonly axialRigidity: {
        readonly kind: "axialRigidity";
        readonly above: 0;
    };
    readonly pretension: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly friction: {
        readonly fields: {
            readonly low: {
                readonly kind: "ratio";
                readonly above: 0;
            };
            readonly high: {
                readonly kind: "ratio";
                readonly above: 0;
            };
        };
    };
    readonly drumFriction: {
        readonly fields: {
            readonly low: {
                readonly kind: "ratio";
                readonly above: 0;
            };
            readonly high: {
                readonly kind: "ratio";
                readonly above: 0;
            };
        };
        readonly optional: true;
    };
    readonly hold: {
        readonly oneOf: readonly ["frictionOnly", "clampedMidPinion"];
        readonly default: "frictionOnly";
    };
    readonly contactStiffness: {
        readonly kind: "foundationModulus";
        readonly above: 0;
        readonly optional: true;
    };
    readonly allowableTension: {
        readonly kind: "force";
        readonly above: 0;
        readonly optional: true;
    };
    readonly groovePitch: {
        readonly kind: "length";
        readonly above: 0;
        readonly optional: true;
    };
    readonly pinionLength: {
        readonly kind: "length";
        readonly above: 0;
        readonly optional: true;
    };
    readonly drumLength: {
        readonly kind: "length";
        readonly above: 0;
        readonly optional: true;
    };
    readonly span: {
        readonly kind: "length";
        readonly above: 0;
        readonly optional: true;
    };
    readonly pinionWrap: {
        readonly kind: "angle";
        readonly above: 0;
        readonly optional: true;
    };
};
type Specified = Given<typeof SPECIFICATION>;
export type FrictionRange = In<'ratio'> | {
    readonly low: In<'ratio'>;
    readonly high: In<'ratio'>;
};
export type DriveSpecification = Omit<Specified, 'friction' | 'drumFriction'> & {
    readonly friction: FrictionRange;
    readonly drumFriction?: FrictionRange | undefined;
};
export declare const frictionRange: (given: FrictionRange | undefined) => {
    readonly low: In<"ratio">;
    readonly high: In<"ratio">;
} | undefined;
export declare function readDrive(given: DriveSpecification): Read;
export type Read = Si<typeof SPECIFICATION>;
export {};
