import type { PlateModel } from './mount-plate.js';
import type { MountNumbers } from './mount-specification.js';
import type { NetworkLink } from './network.js';
import { type SurroundingsNumbers } from './surface.js';
export declare function plateLinks({ plate: x, conductivityScatter }: MountNumbers, plate: PlateModel, where: SurroundingsNumbers): NetworkLink[];
export declare function barLinks({ links }: MountNumbers, where: SurroundingsNumbers): NetworkLink[];
export declare function sinkLinks(sink: NonNullable<MountNumbers['sink']>, where: SurroundingsNumbers): NetworkLink[];
export declare function boardLinks(board: NonNullable<MountNumbers['controller']>, where: SurroundingsNumbers): NetworkLink[];
export declare function boardLoss(board: NonNullable<MountNumbers['controller']>, current: number, speed: number, temperature: number): number;
