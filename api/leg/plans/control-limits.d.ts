import { Quantity } from '../../units/index.js';
export interface CurrentLimit {
    readonly duration: Quantity<'time'> | undefined;
    readonly what: string;
    readonly peakPhase: Quantity<'peakPhaseCurrent'>;
    readonly rmsPhase: Quantity<'rmsPhaseCurrent'>;
    readonly jointTorque: Quantity<'torque'>;
    readonly protects: string;
}
