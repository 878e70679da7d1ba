/** Root of an increasing function from a start, Newton kept in a bracket; `f` leaves its slope in `slope[0]`. */
export function solve(f: (x: number) => number, slope: { at: number }, start: number, low: number, high: number): number {
  let lo = low
  let hi = high
  let x = start
  for (let i = 0; i < 80; i++) {
    const value = f(x)
    if (value > 0) hi = x
    else lo = x
    const newton = x - value / slope.at
    // A last step this small leaves its square.
    if (Math.abs(newton - x) <= 1e-9 * x) return newton
    const next = newton > lo && newton < hi ? newton : 0.5 * (lo + hi)
    if (Math.abs(next - x) <= 1e-15 * x) return next
    x = next
  }
  return x
}
