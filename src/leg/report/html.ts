import type { Assessment } from '../result.js'
import { reportDocument } from './html-page.js'
import { type ReportOptions, reportPage } from './report-page.js'

/**
 * The assessment as one self-contained HTML page: opens without network, prints every step with page numbers, follows light and dark, works by
 * keyboard and screen reader, and filters by joint, part, load case and state. Its content policy allows its own style and script and nothing else;
 * without the script everything is there, unfiltered.
 *
 * Hand it the charts of `reportPictures`; without them, or where they could not be rendered, their numbers are there as tables.
 */
export const htmlReport = (assessment: Assessment, options: ReportOptions = {}): string => reportDocument(reportPage(assessment, options))
