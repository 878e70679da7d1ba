import type { Source, Step } from '../formula/index.js';
import type { Quantity } from '../units/index.js';
import type { CaseId } from './cases/catalogue.js';
import type { Rest, Stake } from './checks/check.js';
import type { FootResult } from './foot-result.js';
import type { Joint } from './numbers.js';
import type { Leg } from './specification/describe.js';
export interface CheckResult {
    readonly id: string;
    readonly part: string;
    readonly mode: string;
    readonly stake: Stake;
    readonly joint?: Joint;
    readonly case: CaseId;
    readonly caseTitle: string;
    readonly demand: Quantity;
    readonly capacity: Quantity;
    readonly reserve: number;
    readonly enough: number;
    readonly reserveBand: {
        readonly pessimistic: number;
        readonly optimistic: number;
    };
    readonly sentence: string;
    readonly demandIs: string;
    readonly capacityIs: string;
    readonly remedy: string;
    readonly chain: readonly Step[];
    readonly sources: readonly Source[];
    readonly notes: readonly string[];
    readonly otherCases: readonly {
        readonly case: CaseId;
        readonly reserve: number;
    }[];
    readonly rests: readonly Rest[];
}
export interface JointResult {
    readonly torque: Quantity<'torque'>;
    readonly speed: Quantity<'angularVelocity'>;
    readonly motorTorque: Quantity<'torque'>;
    readonly peakPhaseCurrent: Quantity<'peakPhaseCurrent'>;
    readonly pretension: Quantity<'force'>;
    readonly tautTension: Quantity<'force'>;
    readonly slackTension: Quantity<'force'>;
    readonly peakTension: Quantity<'force'>;
    readonly motorLoss: Quantity<'power'>;
    readonly windingTemperature: Quantity<'temperature'> | undefined;
    readonly mountTemperature: Quantity<'temperature'> | undefined;
}
export interface CaseResult {
    readonly id: CaseId;
    readonly title: string;
    readonly story: string;
    readonly footForce: Quantity<'force'>;
    readonly air: Quantity<'temperature'>;
    readonly joints: {
        readonly [J in Joint]: JointResult;
    };
}
export interface Unsettled {
    readonly case: CaseId;
    readonly joint: Joint;
    readonly loop: string;
    readonly why: string;
}
export interface Assessment {
    readonly leg: Leg;
    readonly holds: boolean;
    readonly comfortable: boolean;
    readonly wantedReserve: number;
    readonly governing: CheckResult;
    readonly checks: readonly CheckResult[];
    readonly cases: readonly CaseResult[];
    readonly foot: FootResult;
    readonly coupling: 'settled' | 'unsettled';
    readonly unsettled: readonly Unsettled[];
    readonly notMade: readonly {
        readonly id: string;
        readonly why: string;
    }[];
    readonly priors: {
        readonly undecided: number;
        readonly share: number;
        readonly tests: readonly {
            readonly what: string;
            readonly test: string;
            readonly checks: readonly string[];
        }[];
    };
}
