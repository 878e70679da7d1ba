import { type Joint, type Prepared } from '../numbers.js';
import type { Sheet } from '../sheet.js';
import type { CaseState } from '../state.js';
import { type CaseId } from './catalogue.js';
export declare const stageOf: (stage: "motion" | "drive" | "heat", id: CaseId, joint: Joint) => string;
export declare function workOut(leg: Prepared, sheet: Sheet, id: CaseId): CaseState;
