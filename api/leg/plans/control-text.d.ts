import type { ControlSheet } from './control.js';
export declare function controlText(sheet: ControlSheet): string;
