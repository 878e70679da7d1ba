import type { Assessment } from '../result.js'
import { markdownPage } from './markdown-blocks.js'
import { type ReportOptions, reportPage } from './report-page.js'

/**
 * The assessment as a calculation sheet in Markdown. With the same options its words are those of the HTML page; by default it has the calculation of the
 * decisive checks alone.
 */
export const markdownReport = (assessment: Assessment, options: ReportOptions = {}): string =>
  markdownPage(reportPage(assessment, { steps: 'decisive', ...options }))
