/** A document with one field changed; pairs of sizes and of limits are written by their names first. */
export function putting(data: object, path: string, value: unknown): object {
  const copy = structuredClone(data)
  const steps = path.split(/[.[\]]+/).filter((step) => step !== '')
  const last = steps.pop() as string
  let at = copy as Record<string, unknown>
  for (const step of steps) {
    at[step] ??= {}
    const inner = at[step]
    if (Array.isArray(inner) && Number.isNaN(Number(last)))
      at[step] = /^(lowest|highest)$/.test(last)
        ? { lowest: inner[0], highest: inner[1] }
        : { width: inner[0], [step === 'box' ? 'depth' : 'height']: inner[1] }
    at = at[step] as Record<string, unknown>
  }
  at[last] = value
  return copy
}
