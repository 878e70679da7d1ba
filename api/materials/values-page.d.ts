import { type Material } from './record.js';
export declare function valuesPage(materials?: readonly Material[]): string;
