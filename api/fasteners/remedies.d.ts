import { type Given } from '../formula/index.js';
import { Quantity } from '../units/index.js';
declare const REMEDY_INPUTS: {
    readonly clampLoad: {
        readonly kind: "force";
        readonly above: 0;
    };
    readonly boltCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
    readonly printCompliance: {
        readonly kind: "linearCompliance";
        readonly above: 0;
    };
    readonly creep: {
        readonly curve: readonly ["time", "ratio"];
    };
    readonly spring: {
        readonly fields: {
            readonly compliance: {
                readonly kind: "linearCompliance";
                readonly above: 0;
            };
            readonly flatForce: {
                readonly kind: "force";
                readonly above: 0;
            };
        };
    };
    readonly sleeve: {
        readonly fields: {
            readonly compliance: {
                readonly kind: "linearCompliance";
                readonly above: 0;
            };
            readonly shortfall: "length";
        };
    };
    readonly retightenAt: {
        readonly kind: "time";
        readonly above: 0;
    };
    readonly times: {
        readonly list: {
            readonly kind: "time";
            readonly min: 0;
        };
    };
};
export type RemedySpecification = Given<typeof REMEDY_INPUTS>;
export interface RemedyResult {
    readonly remedy: 'asItIs' | 'retightened' | 'springWashers' | 'compressionSleeve';
    readonly clampLoads: readonly Quantity<'force'>[];
    readonly state: 'works' | 'flattened' | 'sleeveTooShort' | 'printLoose';
}
export declare function compareRemedies(specification: RemedySpecification): RemedyResult[];
export {};
