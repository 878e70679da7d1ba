import { type Given, type Source } from '../formula/index.js';
import { Quantity } from '../units/index.js';
import { type Drive } from './drive.js';
import type { AtFriction } from './drive-results.js';
import { type FrictionRange } from './drive-specification.js';
declare const JOB: {
    readonly torque: {
        readonly kind: "torque";
        readonly above: 0;
    };
    readonly wheelRadius: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly ratio: {
        readonly kind: "ratio";
        readonly min: 1;
    };
    readonly centreDistance: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly width: {
        readonly kind: "length";
        readonly above: 0;
    };
    readonly cord: {
        readonly fields: {
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
            readonly pinionTurns: {
                readonly kind: "count";
                readonly min: 0;
            };
            readonly drumWrap: {
                readonly kind: "angle";
                readonly above: 0;
            };
            readonly hold: {
                readonly oneOf: readonly ["frictionOnly", "clampedMidPinion"];
                readonly default: "frictionOnly";
            };
            readonly allowableTension: {
                readonly kind: "force";
                readonly above: 0;
            };
        };
    };
    readonly belt: {
        readonly fields: {
            readonly pitch: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly rootWidth: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly allowableShear: {
                readonly kind: "stress";
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
            readonly backlash: {
                readonly kind: "length";
                readonly min: 0;
                readonly optional: true;
            };
        };
    };
    readonly gear: {
        readonly fields: {
            readonly module: {
                readonly kind: "length";
                readonly above: 0;
            };
            readonly allowableStress: {
                readonly kind: "stress";
                readonly above: 0;
            };
            readonly backlash: {
                readonly kind: "length";
                readonly min: 0;
                readonly optional: true;
            };
        };
    };
};
type Read = Given<typeof JOB>;
export type ReductionJob = Omit<Read, 'cord'> & {
    readonly cord: Omit<Read['cord'], 'friction'> & {
        readonly friction: FrictionRange;
    };
};
export interface ComparedTerm<K extends 'ratio' | 'force' | 'angle' | 'count'> {
    readonly cord: AtFriction<Quantity<K>> | undefined;
    readonly belt: Quantity<K> | undefined;
    readonly gear: Quantity<K> | undefined;
    readonly note: string;
}
export interface ComparedReductions {
    readonly ratio: ComparedTerm<'ratio'>;
    readonly tangentialForce: ComparedTerm<'force'>;
    readonly shaftForce: ComparedTerm<'force'>;
    readonly lostMotion: ComparedTerm<'angle'>;
    readonly windup: ComparedTerm<'angle'>;
    readonly engaged: ComparedTerm<'count'>;
    readonly reserve: ComparedTerm<'ratio'>;
    readonly backlash: {
        readonly belt: {
            readonly value: Quantity<'length'>;
            readonly source: Source;
        };
        readonly gear: {
            readonly value: Quantity<'length'>;
            readonly source: Source;
        };
    };
    readonly drive: Drive;
}
export declare const beltBacklashPrior: () => import("../formula/provenance.js").Property<"ratio">;
export declare function compareReductions(job: ReductionJob): ComparedReductions;
export {};
