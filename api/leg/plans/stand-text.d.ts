import type { StandPlan } from './stand.js';
export declare function standText({ leg, measurements, cautions }: StandPlan): string;
