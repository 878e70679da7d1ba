import { type Chart } from '../chart/index.js';
import type { Given } from '../formula/index.js';
import { type In } from '../units/index.js';
import { interferenceChances } from './print-fit.js';
import { type RemedySpecification } from './remedies.js';
export declare function clampLoadChart(specification: RemedySpecification, needed: In<'force'>): Chart;
export declare function interferenceChart(fit: Given<(typeof interferenceChances)['def']['inputs']>): Chart;
