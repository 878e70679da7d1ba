import type { Assessment } from '../result.js';
import type { ReportPicture } from './pictures.js';
export declare function htmlReport(assessment: Assessment, pictures?: readonly ReportPicture[]): string;
