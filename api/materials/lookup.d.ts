import type { Material } from './record.js';
export declare const allMaterials: () => readonly Material[];
export declare const materialNames: () => string[];
export declare function material(name: string): Material;
