import { expect, test } from 'vitest'
for (const f of ['fits', 'pins', 'threads', 'clamp']) {
  const { checks } = await import(`../published/fasteners-${f}.checks.ts`)
  for (const c of checks) test(`${c.id} ${c.what}`, () => { const { computed, expected, tolerance } = c.run(); if (typeof expected === 'string') expect(computed).toBe(expected); else expect(Math.abs(computed - expected), `${computed} vs ${expected} ± ${tolerance}`).toBeLessThanOrEqual(tolerance) })
}
