const BASE = ['m', 'kg', 's', 'K', 'A', 'mol'] as const

/** Writes packed dimensions as a product of SI base units, such as `kg m^2 s^-2`; `1` for a pure number. */
export function dimensionsText(dim: number): string {
  const parts: [number, string][] = []
  let rest = dim
  for (const unit of BASE) {
    const doubled = ((((rest + 32) % 64) + 64) % 64) - 32 // exponents stand base 64 with a sign each
    rest = (rest - doubled) / 64
    if (doubled !== 0) parts.push([doubled / 2, unit])
  }
  return parts.map(([exponent, unit]) => (exponent === 1 ? unit : `${unit}^${exponent}`)).join(' ') || '1'
}

/** Whether every exponent is even once doubled, so that a square root of the dimensions exists with half exponents. */
export function hasSquareRoot(dim: number): boolean {
  let rest = dim
  for (let i = 0; i < BASE.length; i++) {
    const doubled = ((((rest + 32) % 64) + 64) % 64) - 32
    if (doubled % 2 !== 0) return false
    rest = (rest - doubled) / 64
  }
  return true
}
