import type { AssemblyPlan } from './assembly.js';
export declare function assemblyText(plan: AssemblyPlan): string;
