import { type Evaluator, type Step } from '../formula/index.js';
export interface Sheet {
    readonly of: Evaluator;
    readonly recording: boolean;
    open(stage: string): void;
    keep(step: () => Step): void;
}
export declare const bareSheet: Sheet;
export interface RecordingSheet extends Sheet {
    steps(stages: readonly string[]): Step[];
}
export declare function recordingSheet(): RecordingSheet;
