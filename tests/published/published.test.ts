import { afterAll, describe, expect, test } from 'vitest'
import { checksByFile } from './evidence.js'
import { writeVerification } from './verification.js'

const rows: string[] = []
const plain = (text: string) => text.replaceAll('|', '\\|').replaceAll(/\s+/g, ' ')

for (const [file, checks] of checksByFile) {
  describe(file.slice(0, -'.checks.ts'.length), () => {
    test.each(checks.map((check) => [`${check.id} ${check.what}`, check] as const))('%s', (_, check) => {
      const { computed, expected, tolerance } = check.run()
      const shown = typeof computed === 'number' ? String(Number(computed.toPrecision(8))) : computed
      const difference =
        typeof computed === 'number' && typeof expected === 'number' && expected !== 0
          ? `${(((computed - expected) / expected) * 100).toPrecision(2)} %`
          : '–'
      rows.push(
        `| ${check.id} | ${plain(check.what)} | ${plain(check.expected)} | ${shown} | ${difference} | ${check.source.level} | ${plain(check.source.where)} |`,
      )
      if (typeof expected === 'string') expect(computed).toBe(expected)
      else {
        expect(tolerance, 'a tolerance of zero or NaN is a mistake in the check').toBeGreaterThan(0)
        expect(
          Math.abs((computed as number) - expected),
          `computed ${computed}, expected ${check.expected} within ${check.within} (${check.source.where})`,
        ).toBeLessThanOrEqual(tolerance)
      }
    })
  })
}

afterAll(async () => {
  if (process.env.LIMBWRIGHT_VERIFY !== undefined) await writeVerification(rows)
})
